import { addDays, type CivilDay, civilDay, dayNumber, daysBetween, splitCivilDay } from "@/lib/science/dates/civil-day";
import type { LineStage } from "./line-stage";

/** The days between which a line is drawn. */
export interface LineScale {
  readonly from: CivilDay;
  readonly to: CivilDay;
}

/** A stroke across the line where a month or a year begins. */
export interface Tick {
  readonly day: CivilDay;
  readonly label: string | null;
}

const fewestDays = 60;
const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/**
 * From the first day to the last that any stage can mean, with today where it lies near (`untilToday`), and a little room on both sides. Null
 * where no stage has a day.
 */
export function lineScale(stages: readonly LineStage[], today: CivilDay, untilToday: boolean): LineScale | null {
  const days = stages.flatMap(({ first, last }) => [first, last].filter((day) => day !== null));
  if (days.length === 0) return null;
  if (untilToday) days.push(today);
  days.sort();
  const [from, to] = [days[0] as CivilDay, days.at(-1) as CivilDay];
  const room = Math.max(
    Math.ceil(daysBetween(from, to) * 0.04),
    Math.ceil((fewestDays - daysBetween(from, to)) / 2),
    3,
  );
  if (from < "0001-01-01" || to > "9990-01-01") return { from, to };
  return { from: addDays(from, -room), to: addDays(to, room) };
}

/** Where a day lies between both ends, 0 to 1. */
export function placeOf(day: CivilDay, { from, to }: LineScale): number {
  const whole = dayNumber(to) - dayNumber(from);
  return whole === 0 ? 0.5 : Math.min(1, Math.max(0, (dayNumber(day) - dayNumber(from)) / whole));
}

/** Strokes at the months of a short line, at the years of a long one; at most about eight of them are named. */
export function ticksOf({ from, to }: LineScale): Tick[] {
  const start = splitCivilDay(from);
  const end = splitCivilDay(to);
  if (!start || !end) return [];
  const span = (end.year - start.year) * 12 + end.month - start.month;
  return span <= 30 ? monthTicks(start, span, from, to) : yearTicks(start.year, end.year, from, to);
}

/** Strokes at whole tens or hundreds of days from `origin`, for a line whose beginning has no day yet. */
export function dayTicks({ from, to }: LineScale, origin: CivilDay): Tick[] {
  const most = daysBetween(origin, to);
  const step = [10, 20, 30, 60, 90, 180, 360].find((each) => most / each <= 6) ?? 720;
  return Array.from({ length: Math.floor(most / step) + 1 }, (_, count) => ({
    day: addDays(origin, count * step),
    label: count === 0 ? "day 0" : String(count * step),
  })).filter(({ day }) => day >= from);
}

function monthTicks(start: { year: number; month: number }, span: number, from: CivilDay, to: CivilDay): Tick[] {
  const step = span <= 7 ? 1 : span <= 14 ? 3 : 6;
  const ticks: Tick[] = [];
  for (let count = 0; count <= span + 1; count += 1) {
    const place = start.month - 1 + count;
    const year = start.year + Math.floor(place / 12);
    const month = place % 12;
    const day = civilDay(year, month + 1, 1);
    if (day < from || day > to) continue;
    const named = month % step === 0;
    // The first name says its year, too, where there is room for it: January, which is its year, may lie under today.
    const first = step > 1 && !ticks.some((tick) => tick.label !== null);
    const label = month === 0 ? String(year) : `${months[month]}${first ? ` ${year}` : ""}`;
    if (named || step < 6 || month % 3 === 0) ticks.push({ day, label: named ? label : null });
  }
  return ticks;
}

function yearTicks(first: number, last: number, from: CivilDay, to: CivilDay): Tick[] {
  const step = Math.max(1, Math.ceil((last - first) / 6));
  return Array.from({ length: last - first + 1 }, (_, index) => first + index).flatMap((year) => {
    const day = civilDay(year, 1, 1);
    return day < from || day > to ? [] : [{ day, label: year % step === 0 ? String(year) : null }];
  });
}

/** A line as narrow as it is drawn on a phone, and on anything wider, in CSS pixels. */
export const narrowLine = 150;
export const wideLine = 390;

const letterWidth = 7;
const gap = 5;

/**
 * The days whose names have room on a line of `width` pixels: none runs into another, into "today", or over the edge, and the beginning of a
 * year goes before that of a month. The others keep their stroke.
 */
export function namesWithRoom(
  ticks: readonly Tick[],
  scale: LineScale,
  now: CivilDay | null,
  width: number,
): ReadonlySet<CivilDay> {
  const today = now === null ? null : Math.min(placeOf(now, scale), 0.94) * width;
  const half = ("today".length * letterWidth) / 2;
  const taken = today === null ? [] : [{ from: today - half - gap, to: today + half }];
  const named = new Set<CivilDay>();
  const name = ({ day, label }: Tick) => {
    if (label === null) return;
    const from = placeOf(day, scale) * width;
    const to = from + label.length * letterWidth;
    if (to > width + gap || taken.some((other) => from < other.to + gap && to + gap > other.from)) return;
    taken.push({ from, to });
    named.add(day);
  };
  const year = ({ day }: Tick) => day.endsWith("-01-01");
  ticks.filter(year).forEach(name);
  ticks.filter((tick) => !year(tick)).forEach(name);
  return named;
}

/** Where the mark of each stage stands, 0 to 1: amid its days; one without days evenly between its neighbours, so that the order is seen. */
export function marksOf(stages: readonly LineStage[], scale: LineScale): number[] {
  const known = stages.map(({ first, last }) => {
    if (first === null || last === null) return null;
    return (placeOf(first, scale) + placeOf(last, scale)) / 2;
  });
  return known.map((place, index) => {
    if (place !== null) return place;
    const before = known.slice(0, index).findLastIndex((each) => each !== null);
    const after = known.findIndex((each, at) => at > index && each !== null);
    const low = before < 0 ? 0.02 : (known[before] ?? 0);
    const high = after < 0 ? 0.98 : (known[after] ?? 1);
    const steps = (after < 0 ? stages.length : after) - before;
    return low + ((high - low) * (index - before)) / steps;
  });
}

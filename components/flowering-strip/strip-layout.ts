import {
  addDays,
  type CivilDay,
  dayFromNumber,
  dayNumber,
  daysBetween,
  splitCivilDay,
} from "@/lib/science/dates/civil-day";
import type { FloweringWindow } from "@/lib/science/isolation/flowering-window";
import type { StripRow } from "./strip";

/** The width of the strip, in its own units: about a pixel each on a narrow phone. */
export const stripWidth = 340;
const [left, right] = [4, stripWidth - 4];
const rowHeight = 38;
const top = 26;

export interface DrawnBar {
  /** where it is drawn from and to; a soft end tapers from the outer to the inner place */
  readonly outerFrom: number;
  readonly innerFrom: number;
  readonly innerTo: number;
  readonly outerTo: number;
  /** the end is not known: drawn open to the rim of the strip */
  readonly openFrom: boolean;
  readonly openTo: boolean;
}

export interface DrawnRow {
  readonly row: StripRow;
  readonly nameY: number;
  readonly barY: number;
  readonly bar: DrawnBar;
  /** the days that it may have in common with the stigmas of the grow-out; null too where none of its days is known */
  readonly common: { readonly from: number; readonly to: number } | null;
}

export interface StripLayout {
  readonly height: number;
  readonly rows: readonly DrawnRow[];
  readonly ticks: readonly { readonly x: number; readonly day: CivilDay; readonly month: boolean }[];
  /** first and last day of the stigmas, drawn down through all rows */
  readonly guides: readonly number[];
}

/** Lays flowering windows out by the day, the grow-out's own first. Null where no row has a day. */
export function stripLayout(rows: readonly StripRow[]): StripLayout | null {
  const days = rows.flatMap(({ window }) =>
    [window.from, window.to].flatMap((end) => (end ? [end.first, end.last] : [])),
  );
  const [earliest, latest] = [days.reduce(least, ""), days.reduce(most, "")];
  if (earliest === "" || latest === "") return null;
  const pad = Math.max(3, Math.round(daysBetween(earliest, latest) * 0.1));
  const [start, end] = [addDays(earliest, -pad), addDays(latest, pad + 1)];
  const span = daysBetween(start, end);
  // A day is a stretch, not a point: a window goes from the morning of its first day to the evening of its last.
  const at = (day: CivilDay, evening = false) =>
    left + ((right - left) * (daysBetween(start, day) + (evening ? 1 : 0))) / span;
  const stigma = rows.find((row) => row.of === "stigma")?.window ?? null;
  const drawn = rows.map((row, index): DrawnRow => {
    const y = top + index * rowHeight;
    const known = row.window.from !== null || row.window.to !== null;
    const common =
      row.of === "neighbour" && known && stigma ? commonSpan(barOf(row.window, at), barOf(stigma, at)) : null;
    return { row, nameY: y + 12, barY: y + 24, bar: barOf(row.window, at), common };
  });
  const guides = stigma
    ? [stigma.from ? at(stigma.from.first) : null, stigma.to ? at(stigma.to.last, true) : null].filter(
        (x): x is number => x !== null,
      )
    : [];
  return { height: top + rows.length * rowHeight + 4, rows: drawn, ticks: ticksOf(start, end, at), guides };
}

function barOf({ from, to }: FloweringWindow, at: (day: CivilDay, evening?: boolean) => number): DrawnBar {
  const outerFrom = from ? at(from.first) : left;
  const outerTo = to ? at(to.last, true) : right;
  // An end that is not known leaves the one day that is: the bar is solid there alone.
  const innerFrom = from ? at(from.last) : to ? at(to.first) : right;
  const innerTo = to ? at(to.first, true) : from ? at(from.last, true) : left;
  return { outerFrom, innerFrom, innerTo, outerTo, openFrom: from === null, openTo: to === null };
}

function commonSpan(one: DrawnBar, other: DrawnBar): { from: number; to: number } | null {
  const from = Math.max(one.outerFrom, other.outerFrom);
  const to = Math.min(one.outerTo, other.outerTo);
  return to - from > 1e-6 ? { from, to } : null;
}

/** The first of each month, and weeks between where there is room. */
function ticksOf(start: CivilDay, end: CivilDay, at: (day: CivilDay) => number) {
  const wide = daysBetween(start, end) > 75;
  const ticks: { x: number; day: CivilDay; month: boolean }[] = [];
  for (let number = dayNumber(start); number <= dayNumber(end); number++) {
    const day = dayFromNumber(number);
    const date = splitCivilDay(day)?.day ?? 0;
    const month = date === 1;
    if (month || (!wide && (date === 8 || date === 15 || date === 22))) ticks.push({ x: at(day), day, month });
  }
  return ticks;
}

function least(one: CivilDay, other: CivilDay): CivilDay {
  return one === "" || other < one ? other : one;
}

function most(one: CivilDay, other: CivilDay): CivilDay {
  return other > one ? other : one;
}

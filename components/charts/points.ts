import type { Grade } from "@/components/doubt/grade";

/** A figure at a time. A span without a value is open; with neither it is open from the foot to the top. */
export interface YearPoint {
  /** a year, or a year and its part: 2004.5 is the middle of 2004 */
  readonly year: number;
  readonly value: number | null;
  readonly low?: number | null;
  readonly high?: number | null;
  readonly grade: Grade;
  /** the point in words: "T27, 14 February 2000: 32 of 50 (64 %), 49–77 %" */
  readonly words: string;
}

/** What is followed through the years: a lot, a variety. */
export interface YearSeries {
  readonly name: string;
  readonly points: readonly YearPoint[];
}

/** A stroke between two neighbouring points that both have a value; dashed where either was assumed. */
export interface Stroke {
  readonly from: YearPoint;
  readonly to: YearPoint;
  readonly dashed: boolean;
}

/** The strokes of a series in the order of the years; across an unknown there is none. */
export function strokes(points: readonly YearPoint[]): readonly Stroke[] {
  const order = inOrder(points);
  return order.slice(1).flatMap((to, index) => {
    const from = order[index];
    if (!from || from.value === null || to.value === null) return [];
    return [{ from, to, dashed: from.grade !== "counted" || to.grade !== "counted" }];
  });
}

/** The points by year; those of one year stay as they came. */
export function inOrder(points: readonly YearPoint[]): readonly YearPoint[] {
  return [...points].sort((a, b) => a.year - b.year);
}

/** The years that an axis shows: whole, evenly spaced at 1, 2, 5, 10, 20 or 50, at most `most` of them. */
export function yearTicks(first: number, last: number, most: number): number[] {
  const from = Math.floor(first);
  const to = Math.ceil(last);
  const step = [1, 2, 5, 10, 20, 50, 100].find((each) => (to - from) / each <= most - 1) ?? 200;
  const start = Math.ceil(from / step) * step;
  const ticks: number[] = [];
  for (let year = start; year <= to; year += step) ticks.push(year);
  return ticks.length > 0 ? ticks : [from];
}

/** The axis of years for marks from `first` to `last`: its ends, with a little room beside the marks, and at least one year shown. */
export function yearAxis(first: number, last: number, most: number): { ends: [number, number]; ticks: number[] } {
  const room = Math.max(0.35, (last - first) * 0.03);
  const [from, to] = [first - room, last + room];
  const [earliest, latest] = [Math.ceil(from), Math.floor(to)];
  if (earliest <= latest) return { ends: [from, to], ticks: yearTicks(earliest, latest, most) };
  const nearest = Math.round((first + last) / 2);
  return { ends: [Math.min(from, nearest - 0.1), Math.max(to, nearest + 0.1)], ticks: [nearest] };
}

import type { Grade } from "@/components/doubt/grade";

/** A lot in the chart: when it was harvested and what it keeps (0..1), as a point, as a span, or as nothing that is known. */
export interface DescentPoint {
  readonly id: string;
  readonly name: string;
  /** a year, or a year and its part */
  readonly year: number;
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly grade: Grade;
  /** the point in words, told where a hand rests on it */
  readonly words: string;
  readonly href: string;
  /** some of its genes came by foreign pollen: a thorn is drawn on it */
  readonly foreign: boolean;
}

/** One lot came of another. */
export interface DescentLine {
  readonly from: string;
  readonly to: string;
}

/** Where a point's line is tied: its value, else the middle of its span; null where nothing is known. */
export function heightOf({ value, low, high }: Pick<DescentPoint, "value" | "low" | "high">): number | null {
  if (value !== null) return value;
  return low === null || high === null ? null : (low + high) / 2;
}

/** Lines between points that both have a height; dashed where one of them is not counted. */
export function drawnLines(points: readonly DescentPoint[], lines: readonly DescentLine[]) {
  const byId = new Map(points.map((point) => [point.id, point]));
  return lines.flatMap((line) => {
    const [from, to] = [byId.get(line.from), byId.get(line.to)];
    if (!from || !to || heightOf(from) === null || heightOf(to) === null) return [];
    return [{ from, to, dashed: from.grade !== "counted" || to.grade !== "counted" }];
  });
}

/** Where the upright scale may begin, and the levels that are drawn from there. */
const scales: readonly (readonly number[])[] = [
  [0.9, 0.92, 0.94, 0.96, 0.98, 1],
  [0.75, 0.8, 0.85, 0.9, 0.95, 1],
  [0.5, 0.6, 0.7, 0.8, 0.9, 1],
  [0, 0.25, 0.5, 0.75, 1],
];

/** The levels of the upright scale: as close as can be below the least that is drawn. */
export function levelsFor(points: readonly DescentPoint[]): readonly number[] {
  const least = Math.min(1, ...points.flatMap(({ value, low }) => [value ?? 1, low ?? 1]));
  return scales.find(([floor = 0]) => floor <= least - 0.01) ?? (scales.at(-1) as readonly number[]);
}

/** The ends of the axis of years, with room for half a year on either side. */
export function yearEnds(points: readonly DescentPoint[], ticks: readonly number[]): readonly [number, number] {
  const years = [...points.map(({ year }) => year), ...ticks];
  return [Math.min(...years) - 0.6, Math.max(...years) + 0.6];
}

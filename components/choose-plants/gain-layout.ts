import { roundValues } from "@/components/charts/round-values";

/** One cut: so many kept, what their seed counts as, and how far they stand above their neighbours. */
export interface BreadthPoint {
  readonly kept: number;
  readonly size: { readonly low: number; readonly high: number | null };
  readonly gain: number;
}

export type Marked = BreadthPoint;

export const chartWidth = 360;
export const chartHeight = 262;
const [left, right, top, bottom] = [46, chartWidth - 8, 26, chartHeight - 46];

interface At {
  readonly x: number;
  readonly y: number;
}

/** Where everything of the picture stands. Sizes without an upper end are drawn at their lower one. */
export function breadthLayout(
  points: readonly BreadthPoint[],
  now: Marked,
  floor: number | null,
  wanted: number | null,
) {
  const all = [...points, now];
  const broadest = Math.max(1, floor ?? 0, ...all.map(({ size }) => size.high ?? size.low)) * 1.04;
  const highest = Math.max(0.1, ...all.map(({ gain }) => gain)) * 1.06;
  const lowest = Math.min(0, ...all.map(({ gain }) => gain));
  const x = (size: number) => left + ((right - left) * size) / broadest;
  const y = (gain: number) => bottom - ((bottom - top) * (gain - lowest)) / (highest - lowest);
  const place = (point: BreadthPoint, end: "low" | "high"): At => ({
    x: x(end === "low" ? point.size.low : (point.size.high ?? point.size.low)),
    y: y(point.gain),
  });
  const line = (of: readonly At[]) =>
    of.map((at, step) => `${step === 0 ? "M" : "L"}${round(at.x)} ${round(at.y)}`).join("");
  const lows = points.map((point) => place(point, "low"));
  const highs = points.map((point) => place(point, "high"));
  const span = points.some(({ size }) => size.high === null || size.high - size.low > 0.01 * size.low);
  const goal = points.find(({ kept }) => kept === wanted);
  return {
    curve: line(highs),
    band: span && points.length > 1 ? `${line(highs)}${line([...lows].reverse()).replace("M", "L")}Z` : null,
    at: place(now, "high"),
    wantedAt: goal ? place(goal, "high") : null,
    floorAt: floor === null ? null : x(floor),
    zero: bottom,
    across: roundValues(0, broadest, 5).map((value) => ({ value, at: x(value) })),
    upward: roundValues(lowest, highest, 4).map((value) => ({ value, at: y(value) })),
  };
}

/** A dozen of the cuts, evenly apart by the share kept, and always the present one. */
export function everySoMany(points: readonly BreadthPoint[], kept: number): BreadthPoint[] {
  const step = Math.max(1, Math.ceil(points.length / 12));
  return points.filter((point) => point.kept === kept || point.kept % step === 0 || point.kept === points.length);
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

import { roundValues } from "./round-values";

/** What the plants of one grow-out said of a trait. */
export interface TraitPoint {
  readonly id: string;
  readonly year: number;
  readonly mean: number;
  /** of the mean; null with one plant */
  readonly interval: { readonly low: number; readonly high: number } | null;
  /** least, quarters, greatest of the plants */
  readonly quarters: readonly [number, number, number, number, number];
  /** mean of the plants of which seed was kept */
  readonly kept: number | null;
}

export interface PlacedPoint extends TraitPoint {
  readonly x: number;
  /** least, quarters and greatest, upright */
  readonly ys: readonly [number, number, number, number, number];
  readonly meanAt: number;
  readonly lowAt: number;
  readonly highAt: number;
  readonly keptAt: number | null;
}

export interface TraitLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly bottom: number;
  readonly points: readonly PlacedPoint[];
  readonly band: { readonly from: number; readonly to: number } | null;
  readonly upward: readonly { readonly value: number; readonly at: number }[];
  readonly years: readonly { readonly year: number; readonly x: number }[];
}

const height = 264;
const [left, top, foot] = [52, 14, 34];
const perYear = 46;

/** Where each grow-out stands: years from left to right in their order, those of one year side by side; the scale holds every plant and the range of the type. */
export function traitLayout(points: readonly TraitPoint[], range: readonly [number, number] | null): TraitLayout {
  const ordered = [...points].sort((one, other) => one.year - other.year);
  const width = Math.max(320, left + 16 + ordered.length * perYear);
  const ends = [
    ...ordered.flatMap(({ quarters, kept }) => [quarters[0], quarters[4], kept ?? quarters[0]]),
    ...(range ?? []),
  ];
  const [lowest, highest] = [Math.min(...ends), Math.max(...ends)];
  const air = (highest - lowest || Math.abs(highest) || 1) * 0.06;
  const bottom = height - foot;
  const y = (value: number) => bottom - ((bottom - top) * (value - lowest + air)) / (highest - lowest + 2 * air);
  const step = (width - left - 16) / Math.max(1, ordered.length);
  const clipped = (value: number) => Math.min(bottom, Math.max(top, y(value)));
  const placed = ordered.map((point, at): PlacedPoint => {
    const [a, b, c, d, e] = point.quarters;
    return {
      ...point,
      x: left + step * (at + 0.5),
      ys: [y(a), y(b), y(c), y(d), y(e)],
      meanAt: y(point.mean),
      lowAt: clipped(point.interval?.low ?? point.mean),
      highAt: clipped(point.interval?.high ?? point.mean),
      keptAt: point.kept === null ? null : y(point.kept),
    };
  });
  return {
    ...{ width, height, left, bottom, points: placed },
    band: range ? { from: y(range[1]), to: y(range[0]) } : null,
    upward: roundValues(lowest - air, highest + air, 4).map((value) => ({ value, at: y(value) })),
    years: placed.map(({ year, x }) => ({ year, x })),
  };
}

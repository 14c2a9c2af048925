import type { StemLot } from "../stem";

/** Steps of the tone from the least to the most diversity retained in this variety. */
export const toneSteps = 10;
/** Lots that differ by less than this are of one tone. */
const leastRange = 0.02;

export interface ToneScale {
  /** diversity retained where the tone is palest and where it is deepest */
  readonly low: number;
  readonly high: number;
}

/** From the least to the most that a lot of the variety retains, so that small differences show; null where no lot has a figure. */
export function toneScale(lots: readonly StemLot[]): ToneScale | null {
  const kept = lots.flatMap((lot) => (lot.kept ? [middle(lot.kept)] : []));
  if (kept.length === 0) return null;
  const [low, high] = [Math.min(...kept), Math.max(...kept)];
  return high - low < leastRange ? { low: high - leastRange, high } : { low, high };
}

/** The tone of a lot, 0 (palest) to `toneSteps`; null: not known. */
export function toneOf(lot: StemLot, scale: ToneScale | null): number | null {
  if (!lot.kept || !scale) return null;
  const share = (middle(lot.kept) - scale.low) / (scale.high - scale.low);
  return Math.round(Math.min(1, Math.max(0, share)) * toneSteps);
}

function middle({ low, high }: { readonly low: number; readonly high: number }): number {
  return (low + high) / 2;
}

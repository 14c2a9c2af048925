import {
  type EffectiveSizeSpan,
  type EffectiveSizeSpanInput,
  effectiveSizeSpan,
} from "@/lib/science/effective-size/effective-size-span";
import type { Outcome } from "@/lib/science/outcome";

/** A grow-out whose seed parents are yet to be chosen. */
export type PlotToChooseIn = Omit<EffectiveSizeSpanInput, "seedParents" | "seedShares">;

export interface Cut {
  /** plants whose seed is kept */
  readonly kept: number;
  /** whose pollen there was: of all that stand, or of the kept alone, the others having been pulled before they shed */
  readonly pollen: "all" | "kept";
  /** seed of each alike, or as the plants bear, which nobody has measured */
  readonly shares: "equal" | "unknown";
}

/**
 * What effectiveSizeSpan is asked for a grow-out of which so many plants are kept. Where the pollen is of the kept alone they are the pollen parents, too;
 * with separate sexes the males stay as they are. Source: as effectiveSizeSpan.
 */
export function cutOfPlot(plot: PlotToChooseIn, { kept, pollen, shares }: Cut): EffectiveSizeSpanInput {
  const counted = { low: kept, high: kept };
  return {
    ...plot,
    pollenParents: pollen === "kept" && plot.sexes !== "separate" ? counted : plot.pollenParents,
    seedParents: counted,
    seedShares: shares,
    seedParentsMayNotShed: pollen === "kept" ? false : plot.seedParentsMayNotShed,
  };
}

/**
 * The effective size of a grow-out of which so many plants are kept, in plants: from the worst to the best that is on record.
 *
 *     Ne = 1 / (κ (1 + F)), κ as in effectiveSizeSpan
 *
 * Refused: what effectiveSizeSpan refuses. Example: 20 of 200 kept, seed alike, pollen of all: 61.5; of the kept alone: 20.
 */
export function sizeOfCut(plot: PlotToChooseIn, cut: Cut): Outcome<EffectiveSizeSpan> {
  return effectiveSizeSpan(cutOfPlot(plot, cut));
}

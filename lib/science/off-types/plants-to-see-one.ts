import { faultsAmong, insideFault, shareAboveZeroFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refused } from "@/lib/science/outcome";
import { guardedCeiling } from "@/lib/science/whole-steps";

export interface PlantsToSeeOneInput {
  /** share of off-types to be found out, above 0 */
  readonly frequency: number;
  /** between 0 and 1; default 0.95 */
  readonly confidence?: number;
}

export interface PlantsToSeeOne {
  readonly plants: number;
  readonly assumed: readonly Assumption[];
}

/** Room for rounding where ln/ln hits a whole number. */
const LOGARITHM_SLACK = 1e-12;

/**
 * The fewest plants to look at that would show at least one off-type.
 *
 *     n = ⌈ ln(1 − confidence) / ln(1 − frequency) ⌉
 *
 * Refused: a frequency of 0 (no number of plants shows what is not there), a confidence of 0 or 1.
 * Limits: plants picked at random from many. Example: 1 % at 95 %: 299.
 * Source: the chance (1 − f)ⁿ that n plants show none.
 */
export function plantsToSeeOne(input: PlantsToSeeOneInput): Outcome<PlantsToSeeOne> {
  const { frequency, confidence = 0.95 } = input;
  const faults = faultsAmong(
    shareAboveZeroFault([], "frequency", frequency),
    insideFault([], "confidence", confidence),
  );
  if (faults.length > 0) return refused(...faults);
  const plants = guardedCeiling(Math.log1p(-confidence) / Math.log1p(-frequency), LOGARITHM_SLACK);
  return accepted({
    plants: Math.max(1, plants),
    assumed: input.confidence === undefined ? [{ code: "confidence-95", text: "with 95 % confidence" }] : [],
  });
}

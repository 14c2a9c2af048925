import { countFault, faultsAmong, insideFault, shareAboveZeroFault, shareFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refused } from "@/lib/science/outcome";
import { guardedCeiling } from "@/lib/science/whole-steps";

export interface AlleleCaptureInput {
  /** p: share of the genes that are the rare form, above 0 */
  readonly frequency: number;
  /** P: how sure to have it, between 0 and 1 */
  readonly probability: number;
  /** places in the genome that must all be caught; default 1 */
  readonly loci?: number;
  /** F, 0 to 1; default 0 */
  readonly inbreeding?: number;
}

export interface AlleleCapture {
  readonly plants: number;
  readonly assumed: readonly Assumption[];
}

/** Room for rounding where ln/ln hits a whole number. */
const LOGARITHM_SLACK = 1e-12;

/**
 * How many plants to take so that rare forms of genes are among them.
 *
 *     the smallest n with [1 − (1 − p)^(2n/(1 + F))]^loci ≥ P
 *
 * Refused: a frequency of 0, a probability of 0 or 1. Limits: unrelated plants picked at random, unlinked loci; plants that gave both
 * seed and pollen. Example: 5 % at 95 %: 30 plants of an outbreeder, 59 of a selfer.
 * Source: Marshall & Brown 1975; the example Brown & Marshall 1995, as quoted in United States collecting protocols.
 */
export function alleleCapture(input: AlleleCaptureInput): Outcome<AlleleCapture> {
  const { frequency, probability, loci = 1, inbreeding = 0 } = input;
  const faults = faultsAmong(
    shareAboveZeroFault([], "frequency", frequency),
    insideFault([], "probability", probability),
    countFault([], "loci", loci, 1),
    shareFault([], "inbreeding", inbreeding),
  );
  if (faults.length > 0) return refused(...faults);
  // 1 − P^(1/loci), without losing the small difference
  const missed = -Math.expm1(Math.log(probability) / loci);
  const genes = Math.log(missed) / Math.log1p(-frequency);
  return accepted({
    plants: Math.max(1, guardedCeiling((genes * (1 + inbreeding)) / 2, LOGARITHM_SLACK)),
    assumed: assumedOf(input),
  });
}

function assumedOf({ loci, inbreeding, frequency }: AlleleCaptureInput): Assumption[] {
  if (frequency === 1) return [];
  const assumed: Assumption[] = [];
  if (loci === undefined) assumed.push({ code: "one-locus", text: "one gene is looked at" });
  if (inbreeding === undefined) assumed.push({ code: "not-inbred", text: "the plants are not inbred (inbreeding 0)" });
  return assumed;
}

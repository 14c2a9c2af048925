import { countFault, faultsAmong, positiveFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

export interface ThousandSeedWeightInput {
  readonly counts: readonly { readonly seeds: number; readonly grams: number }[];
}

export interface ThousandSeedWeight {
  /** grams */
  readonly thousandSeedGrams: number;
  /** percent; null for one weighing */
  readonly cvPercent: number | null;
  readonly seedsPerGram: number;
  readonly assumed: readonly Assumption[];
}

/**
 * Thousand-seed weight from counted and weighed samples.
 *
 *     thousandSeedGrams = 1000 Σ grams / Σ seeds
 *     cvPercent = 100 s/m        m, s: mean and standard deviation (n − 1) of the replicates' weights a seed
 *
 * Refused: no sample, a sample of no seed or no weight.
 * Limits: a spread above 4 % (6 % for chaffy seed) asks for more samples. Example: 8 × 100 seeds: 2.133 g, 2.01 %, 469 a gram.
 * Source: eight replicates of 100 as in the AOSA weight tutorial of 2001 (its printed weights are the example).
 */
export function thousandSeedWeight({ counts }: ThousandSeedWeightInput): Outcome<ThousandSeedWeight> {
  const faults = counts.flatMap(({ seeds, grams }, index) =>
    faultsAmong(countFault(["counts", index], "seeds", seeds, 1), positiveFault(["counts", index], "grams", grams)),
  );
  if (counts.length === 0) {
    faults.push(refusal("no-sample", ["counts"], [], "holds no weighed sample", "give at least one"));
  }
  if (faults.length > 0) return refused(...faults);
  const seeds = counts.reduce((sum, count) => sum + count.seeds, 0);
  const grams = counts.reduce((sum, count) => sum + count.grams, 0);
  return accepted({
    thousandSeedGrams: (1000 * grams) / seeds,
    cvPercent: cvPercent(counts.map((count) => count.grams / count.seeds)),
    seedsPerGram: seeds / grams,
    assumed: [],
  });
}

function cvPercent(weights: readonly number[]): number | null {
  if (weights.length < 2) return null;
  const mean = weights.reduce((sum, weight) => sum + weight, 0) / weights.length;
  const squares = weights.reduce((sum, weight) => sum + (weight - mean) ** 2, 0);
  return (100 * Math.sqrt(squares / (weights.length - 1))) / mean;
}

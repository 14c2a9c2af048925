import { chiSquareUpperTail } from "@/lib/science/distributions/chi-square";
import { studentizedRangeQuantile975 } from "@/lib/science/distributions/studentized-range";
import { exactRangeProbability } from "@/lib/science/germination/exact-range-probability";
import type { ReplicateCounts } from "@/lib/science/germination/test-counts";

export interface ReplicateSpread {
  /** largest less smallest share of normal seedlings */
  readonly range: number;
  /** the range that like replicates pass once in 40 tests */
  readonly toleratedRange: number;
  readonly chiSquare: number;
  readonly degrees: number;
  readonly pValue: number;
  /** the chance of a range this wide among like replicates; null where sizes differ or above 10,000 seeds */
  readonly exactP: number | null;
  readonly consistent: boolean;
}

/** Replicates are called unlike when chance alone gives such a range this often or seldomer. */
const UNLIKE_BELOW = 0.025;
/** Rounding must not tip a chance of exactly 0.025. */
const TIE_SLACK = 1e-12;
const MOST_SEEDS_EXACT = 10_000;

/**
 * Whether the replicates of one test are alike.
 *
 *     tolerated range = Q₀.₉₇₅(r, ∞) √(p(1 − p)/n̄)        n̄: harmonic mean of the seeds sown
 *     χ² = Σ (xᵢ − nᵢp)² / (nᵢ p(1 − p))                   r − 1 degrees; 0 where none or all germinated
 *     consistent: exactP > 0.025, or where it is null range ≤ tolerated range
 *
 * Takes two or more sound replicates. Shares 0 to 1. The table in a seed law is another thing: see publishedTolerance.
 * Source: Miles 1963, Proc. ISTA 28:525-686 (tolerated range); exactRangeProbability for the exact chance.
 */
export function replicateSpread(replicates: readonly ReplicateCounts[]): ReplicateSpread {
  const r = replicates.length;
  const sown = replicates.reduce((sum, replicate) => sum + replicate.sown, 0);
  const normal = replicates.reduce((sum, replicate) => sum + replicate.normal, 0);
  const p = normal / sown;
  const variance = (normal / sown) * ((sown - normal) / sown);
  const range = largestDifference(replicates.map((replicate) => replicate.normal / replicate.sown));
  const perSeed = replicates.reduce((sum, replicate) => sum + 1 / replicate.sown, 0) / r;
  const toleratedRange = studentizedRangeQuantile975(r) * Math.sqrt(variance * perSeed);
  const chiSquare =
    variance === 0 ? 0 : replicates.reduce((sum, { sown: n, normal: x }) => sum + (x - n * p) ** 2 / (n * variance), 0);
  const exactP = exactChance(replicates, sown, normal);
  return {
    range,
    toleratedRange,
    chiSquare,
    degrees: r - 1,
    pValue: variance === 0 ? 1 : chiSquareUpperTail(chiSquare, r - 1),
    exactP,
    consistent: exactP === null ? range <= toleratedRange + TIE_SLACK : exactP > UNLIKE_BELOW + TIE_SLACK,
  };
}

function exactChance(replicates: readonly ReplicateCounts[], sown: number, normal: number): number | null {
  const size = replicates[0]?.sown ?? 0;
  if (sown > MOST_SEEDS_EXACT || replicates.some((replicate) => replicate.sown !== size)) return null;
  const range = largestDifference(replicates.map((replicate) => replicate.normal));
  return exactRangeProbability(replicates.length, size, normal, range);
}

function largestDifference(numbers: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const number of numbers) {
    least = Math.min(least, number);
    most = Math.max(most, number);
  }
  return most - least;
}

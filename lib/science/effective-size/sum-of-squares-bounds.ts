import { countFault, faultsAmong, shareAboveZeroFault } from "@/lib/science/limits";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { ROUNDING_SLACK } from "@/lib/science/whole-steps";

/** Σq² at its least and at its most. */
export interface SumOfSquaresBounds {
  readonly min: number;
  readonly max: number;
}

/**
 * How alike or unlike the shares of n plants can be where only the largest share is known.
 *
 *     min Σq² = q² + (1 − q)²/(n − 1)          the others alike
 *     max Σq² = r q² + (1 − r q)²              r = ⌊1/q⌋ plants as large as the largest, one takes the rest
 *
 * n: plants, whole, 1 or more; q: the largest share, 0 to 1. Refused: a largest share below 1/n or above 1, more than one
 * plant's all. Limits: nothing else of the shares is known. Example: n 12, q 0.3: 0.1345 to 0.28.
 * Source: derived; a sum of squares is least where the shares are alike and most where they are as unlike as they may be.
 */
export function sumOfSquaresBounds(input: {
  readonly plants: number;
  readonly largest: number;
}): Outcome<SumOfSquaresBounds> {
  const { plants, largest } = input;
  const faults = faultsAmong(countFault([], "plants", plants, 1), shareAboveZeroFault([], "largest", largest));
  if (faults.length === 0 && largest * plants < 1 - ROUNDING_SLACK) {
    const needed = `at least 1/${plants}: among ${plants} plants one gave no less`;
    faults.push(refusal("largest-too-small", ["largest"], largest, "cannot be the largest share", needed));
  }
  if (faults.length === 0 && plants === 1 && largest < 1) {
    faults.push(refusal("largest-too-small", ["largest"], largest, "is not all", "a single plant gave everything: 1"));
  }
  if (faults.length > 0) return refused(...faults);
  if (plants === 1) return accepted({ min: 1, max: 1 });
  const asLarge = Math.floor(1 / largest + ROUNDING_SLACK);
  const rest = Math.max(0, 1 - asLarge * largest);
  return accepted({
    min: largest ** 2 + (1 - largest) ** 2 / (plants - 1),
    max: asLarge * largest ** 2 + rest ** 2,
  });
}

/** Effective sizes of grow-outs as far as they are known: a point has both ends alike; a high end of null is not bounded. */
export interface SizeSpan {
  readonly low: number;
  readonly high: number | null;
}

/**
 * The one effective size that grow-outs of different size come to together: plants, from the worst to the best of what is known.
 *
 *     Ne_h = t / Σ (1/Ne)          an end without bound adds nothing to the sum; all without bound: null
 *
 * One grow-out of few plants outweighs many of a thousand. Null as a whole where no grow-out is given. Takes sizes above 0;
 * the calculation refuses others.
 * Limits: an approximation of the product of (1 − 1/(2Ne)), good for sizes above about 5; years in the jar do not count, grow-outs do.
 * Example: 10, 100, 50, 80, 20 and 500: 30.8; nine of 1,000 and one of 10: 91.7.
 * Source: Wright 1938, Science 87:430-431; the recursion 1 − Π(1 − 1/(2Ne)), Crow & Kimura 1970.
 */
export function harmonicMeanSize(sizes: readonly SizeSpan[]): SizeSpan | null {
  if (sizes.length === 0) return null;
  const mean = (ends: readonly (number | null)[]) => {
    const sum = ends.reduce<number>((total, end) => total + (end === null ? 0 : 1 / end), 0);
    return sum === 0 ? null : sizes.length / sum;
  };
  return { low: mean(sizes.map(({ low }) => low)) ?? 0, high: mean(sizes.map(({ high }) => high)) };
}

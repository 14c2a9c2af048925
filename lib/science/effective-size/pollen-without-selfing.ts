/**
 * p*: each plant's share of the fathers where no plant can father its own seed.
 *
 *     p*ᵢ = Σ_{j≠i} qⱼ · pᵢ / (1 − pⱼ)
 *
 * q: shares of the seed, one a plant, 0 for a plant whose seed is not kept; p: shares of the pollen; both sum to 1.
 * A plant without seed needs no father, so the single pollen parent of other plants' seed is allowed.
 * Source: derived from the contribution form of effective size, and checked there by gene drop (10 of 40 plants: 23.364).
 */
export function pollenWithoutSelfing(q: readonly number[], p: readonly number[]): number[] {
  const others = sumsOfOthers(p);
  const perPollen = q.map((share, j) => (share === 0 ? 0 : share / (others[j] ?? 0)));
  const seedOfOthers = sumsOfOthers(perPollen);
  return p.map((share, i) => share * (seedOfOthers[i] ?? 0));
}

/** For each place the sum of all other places, without the cancellation of "total minus own". */
function sumsOfOthers(numbers: readonly number[]): number[] {
  const sums = new Array<number>(numbers.length).fill(0);
  let before = 0;
  for (let i = 0; i < numbers.length; i++) {
    sums[i] = before;
    before += numbers[i] ?? 0;
  }
  let after = 0;
  for (let i = numbers.length - 1; i >= 0; i--) {
    sums[i] = (sums[i] ?? 0) + after;
    after += numbers[i] ?? 0;
  }
  return sums;
}

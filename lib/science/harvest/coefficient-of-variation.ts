/**
 * How unlike amounts are: their standard deviation (over all of them, n in the denominator) over their mean, so that Σ shares² is
 * (1 + cv²)/n, as the cv of shares in effectiveSize means it. Unitless; 0 for none or for amounts of nothing.
 */
export function coefficientOfVariation(amounts: readonly number[]): number {
  const mean = amounts.reduce((sum, amount) => sum + amount, 0) / amounts.length;
  if (!(mean > 0)) return 0;
  const squares = amounts.reduce((sum, amount) => sum + (amount / mean - 1) ** 2, 0);
  return Math.sqrt(squares / amounts.length);
}

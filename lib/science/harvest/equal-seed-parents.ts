/**
 * How many seed parents of equal shares the unequal ones count as: Nf = (Σw)² / Σw². Any unit; null where there is no seed.
 * Example: 90, 5 and 5 g count as 1.23. Source: the seed side of effectiveSize, 1/P_MM (Crow &
 * Denniston 1988, Evolution 42:482-495).
 */
export function equalSeedParents(amounts: readonly number[]): number | null {
  const largest = Math.max(0, ...amounts);
  if (largest === 0) return null;
  const scaled = amounts.map((amount) => amount / largest);
  const sum = scaled.reduce((total, share) => total + share, 0);
  return sum ** 2 / scaled.reduce((total, share) => total + share ** 2, 0);
}

/**
 * The share of all seed that the heaviest few seed parents gave: Σ of the k largest / Σ of all. 0..1; null where there is no seed.
 * Source: its definition.
 */
export function heaviestShare(amounts: readonly number[], heaviest: number): number | null {
  const descending = amounts.toSorted((one, other) => other - one);
  const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
  const all = sum(descending);
  return all > 0 ? sum(descending.slice(0, heaviest)) / all : null;
}

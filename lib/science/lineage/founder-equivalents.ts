/**
 * How many unrelated plants would hold as much diversity as a lot does: founder equivalents, plants.
 *
 *     1/(2θ)          null at θ = 0: these records do not limit it
 *
 * Source: Lacy 1989, Zoo Biol. 8:111-123.
 */
export function founderEquivalents(coancestry: number): number | null {
  return coancestry <= 0 ? null : 1 / (2 * coancestry);
}

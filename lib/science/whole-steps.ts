/** Relative slack against rounding where a ceiling or a comparison decides a count. */
export const ROUNDING_SLACK = 1e-9;

/**
 * The smallest whole number that is not below `value`, where a value that passes a whole number by rounding alone
 * counts as that number: 0.1 · 30 = 3.0000000000000004 gives 3.
 */
export function guardedCeiling(value: number, slack = ROUNDING_SLACK): number {
  return Math.ceil(value - Math.abs(value) * slack);
}

/** Whether `value` reaches `needed`, rounding aside. */
export function reaches(value: number, needed: number, slack = ROUNDING_SLACK): boolean {
  return value >= needed - Math.abs(needed) * slack;
}

import type { MeanOfYear } from "./mean-of-year";

export interface DifferenceToCheck {
  /** variety less check, in the trait's unit */
  readonly difference: number;
  readonly standardError: number;
}

/**
 * How far a variety stood above a check that was grown beside it in the same year: the weather of the year, which both had, falls out.
 *
 *     D = V − K;  standard error √(s_v²/n_v + s_k²/n_k)
 *
 * Null where either has fewer than two plants. Limits: what the year did to the one and not to the other stays in it; the noise of the check is added in full.
 * Example: 62 ± 6 of 40 against 60 ± 8 of 20: 2, standard error 2.025. Source: Welch 1938, Biometrika 29:350-362.
 */
export function differenceToCheck(variety: MeanOfYear, check: MeanOfYear): DifferenceToCheck | null {
  if (variety.sd === null || check.sd === null) return null;
  return {
    difference: variety.mean - check.mean,
    standardError: Math.sqrt(variety.sd ** 2 / variety.plants + check.sd ** 2 / check.plants),
  };
}

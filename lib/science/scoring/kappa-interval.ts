/** The 0.975 quantile of the standard normal. */
const Z = 1.959963984540054;

/**
 * The 95 % interval of a weighted kappa, cut at the ends that a kappa can have.
 *
 *     κ ± 1.96·SE, within −1 and 1
 *
 * Source: Fleiss, Cohen & Everitt 1969, Psychol. Bull. 72:323-327 (for large samples; too narrow for few plants).
 */
export function kappaInterval(kappa: number, standardError: number): { readonly low: number; readonly high: number } {
  return { low: Math.max(-1, kappa - Z * standardError), high: Math.min(1, kappa + Z * standardError) };
}

import cdf from "@stdlib/stats-base-dists-chisquare-cdf";

/** The chance that a chi-square draw of these degrees of freedom is at least x (to 1e-15 absolute). */
export function chiSquareUpperTail(x: number, degrees: number): number {
  return 1 - cdf(x, degrees);
}

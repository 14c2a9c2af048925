import erfcinv from "@stdlib/math-base-special-erfcinv";
import cdf from "@stdlib/stats-base-dists-normal-cdf";

/** Φ(z): the chance that a standard normal draw is at most z. Exact to 1e-15 relative in the lower tail. */
export function normalCdf(z: number): number {
  return cdf(z, 0, 1);
}

/**
 * Φ⁻¹(p) for 0 < p < 1; −∞ at 0, ∞ at 1. By the inverse of the complementary error function, which holds in the tails
 * where a plain quantile does not (checked down to p = 1e-100).
 */
export function normalQuantile(p: number): number {
  return p < 0.5 ? -Math.SQRT2 * erfcinv(2 * p) : Math.SQRT2 * erfcinv(2 * (1 - p));
}

/** The z beyond which, on both sides together, lies the chance `alpha`: 1.96 for 0.05. */
export function twoSidedNormal(alpha: number): number {
  return Math.SQRT2 * erfcinv(alpha);
}

/** The chance of a standard normal draw at least as far from 0 as z, on either side. */
export function twoSidedNormalChance(z: number): number {
  return 2 * normalCdf(-Math.abs(z));
}

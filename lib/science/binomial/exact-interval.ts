import type { Interval } from "@/lib/science/binomial/interval";
import { betaQuantile } from "@/lib/science/distributions/beta";

/**
 * The exact interval of a share (Clopper–Pearson): it covers the true share at least as often as it says.
 *
 *     low = BetaInv(α/2; x, n − x + 1), high = BetaInv(1 − α/2; x + 1, n − x);  0 at x = 0, 1 at x = n
 *
 * x of n (0 ≤ x ≤ n, n ≥ 1), confidence between 0 and 1. Example: 18 of 20 at 0.95: 0.6830 to 0.9877.
 * Source: Clopper & Pearson 1934, Biometrika 26:404-413.
 */
export function exactInterval(x: number, n: number, confidence: number): Interval {
  const tail = (1 - confidence) / 2;
  return { low: exactLower(x, n, tail), high: 1 - exactLower(n - x, n, tail) };
}

/**
 * The one-sided exact upper bound U of a share: had it been U, x or fewer of n would be seen with chance 1 − confidence.
 * 1 at x = n. Example: 0 of 100 at 0.95: 0.0295. Source: as exactInterval.
 */
export function exactUpperBound(x: number, n: number, confidence: number): number {
  return 1 - exactLower(n - x, n, 1 - confidence);
}

function exactLower(x: number, n: number, tail: number): number {
  return x === 0 ? 0 : betaQuantile(tail, x, n - x + 1);
}

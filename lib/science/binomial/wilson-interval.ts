import type { Interval } from "@/lib/science/binomial/interval";
import { twoSidedNormal } from "@/lib/science/distributions/normal";

/**
 * Wilson's score interval of a share: short, and right on average.
 *
 *     (p + z²/2n ± z √(p(1 − p)/n + z²/4n²)) / (1 + z²/n)          p = x/n
 *
 * x of n (0 ≤ x ≤ n, n ≥ 1), confidence between 0 and 1. Example: 18 of 20 at 0.95: 0.6990 to 0.9721.
 * Source: Wilson 1927, J. Am. Stat. Assoc. 22:209-212.
 */
export function wilsonInterval(x: number, n: number, confidence: number): Interval {
  const z = twoSidedNormal(1 - confidence);
  return { low: wilsonLower(x, n, z), high: 1 - wilsonLower(n - x, n, z) };
}

function wilsonLower(x: number, n: number, z: number): number {
  if (x === 0) return 0;
  const p = x / n;
  const half = z * Math.sqrt((p * (1 - p)) / n + (z * z) / (4 * n * n));
  const middle = p + (z * z) / (2 * n);
  // (middle − half)(middle + half) = p²(1 + z²/n): written so, a small lower bound does not cancel away
  return (p * p) / (middle + half);
}

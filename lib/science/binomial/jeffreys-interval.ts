import type { Interval } from "@/lib/science/binomial/interval";
import { betaQuantile } from "@/lib/science/distributions/beta";

/**
 * Jeffreys' interval of a share: the middle of the Beta(x + ½, n − x + ½) that a test leaves.
 *
 *     low = BetaInv(α/2; x + ½, n − x + ½), high = BetaInv(1 − α/2; ...);  0 at x = 0, 1 at x = n
 *
 * x of n (0 ≤ x ≤ n, n ≥ 1), confidence between 0 and 1. Example: 18 of 20 at 0.95: 0.7161 to 0.9786.
 * Source: Brown, Cai & DasGupta 2001, Stat. Sci. 16:101-133.
 */
export function jeffreysInterval(x: number, n: number, confidence: number): Interval {
  const tail = (1 - confidence) / 2;
  return { low: jeffreysLower(x, n, tail), high: 1 - jeffreysLower(n - x, n, tail) };
}

function jeffreysLower(x: number, n: number, tail: number): number {
  return x === 0 ? 0 : betaQuantile(tail, x + 0.5, n - x + 0.5);
}

import type { Interval } from "@/lib/science/binomial/interval";
import { wilsonInterval } from "@/lib/science/binomial/wilson-interval";

/**
 * Newcombe's hybrid score interval of the difference pb − pa, built from the Wilson interval of each share.
 *
 *     low  = d − √((pb − lb)² + (ua − pa)²)
 *     high = d + √((ub − pb)² + (pa − la)²)          d = pb − pa; l, u: Wilson bounds
 *
 * xa of na and xb of nb seeds, confidence between 0 and 1; result −1 to 1.
 * Example: 56 of 70 less 48 of 80 at 0.95: 0.0524 to 0.3339. Source: Newcombe 1998, Stat. Med. 17:873-890, method 10.
 */
export function newcombeInterval(xa: number, na: number, xb: number, nb: number, confidence: number): Interval {
  const pa = xa / na;
  const pb = xb / nb;
  const a = wilsonInterval(xa, na, confidence);
  const b = wilsonInterval(xb, nb, confidence);
  return {
    low: pb - pa - Math.hypot(pb - b.low, a.high - pa),
    high: pb - pa + Math.hypot(b.high - pb, pa - a.low),
  };
}

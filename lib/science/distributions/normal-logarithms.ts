import { normalCdf } from "@/lib/science/distributions/normal";

const LN_ROOT_TWO_PI = Math.log(2 * Math.PI) / 2;
/** Beyond this the series of the tail is exact, and the tail itself soon too small for a number. */
const FAR_TAIL = 30;

/** ln φ(u), ln Φ(u) and ln Φ(−u) of the standard normal curve, sound however far out u lies. */
export interface NormalLogarithms {
  readonly density: number;
  readonly below: number;
  readonly above: number;
}

/**
 * The three logarithms at u. In the far tail ln Φ(−u) = ln φ(u) − ln u + ln(1 − 1/u² + 3/u⁴ − 15/u⁶), exact there to 1e-10.
 * Source: Abramowitz & Stegun 1964, 26.2.12.
 */
export function normalLogarithms(u: number): NormalLogarithms {
  const distance = Math.abs(u);
  const density = -(u * u) / 2 - LN_ROOT_TWO_PI;
  if (distance > FAR_TAIL) {
    const w = 1 / (u * u);
    const tail = density - Math.log(distance) + Math.log1p(-w * (1 - 3 * w * (1 - 5 * w)));
    return u < 0 ? { density, below: tail, above: 0 } : { density, below: 0, above: tail };
  }
  const tail = normalCdf(-distance);
  const far = Math.log(tail);
  const near = Math.log1p(-tail);
  return u < 0 ? { density, below: far, above: near } : { density, below: near, above: far };
}

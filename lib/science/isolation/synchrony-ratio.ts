import type { FloweringCurve } from "./flowering-curve";

/**
 * Foreign pollen that meets our stigmas, relative to pollen that is fully in time: exp(−δ²/(2(σp² + σs²))), δ the days between the
 * peaks. 0..1, 1 where the peaks fall together. It under-states late stigmas, which meet little pollen of their own.
 * Example: 5 days, sd 2 and 2: 0.2096. Source: product of two normal curves, integrated.
 */
export function synchronyRatio(pollen: FloweringCurve, stigma: FloweringCurve): number {
  const days = pollen.peak - stigma.peak;
  return Math.exp(-(days * days) / (2 * (pollen.sd ** 2 + stigma.sd ** 2)));
}

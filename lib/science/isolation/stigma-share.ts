import { adaptiveIntegral } from "../quadrature/adaptive-integral";
import type { FloweringCurve } from "./flowering-curve";

// A normal curve beyond nine standard deviations holds less than 1e-18 of its area.
const reach = 9;

/**
 * The share of our stigmas that meet foreign pollen, day by day: ∫ s(t)·ρ f(t)/(o(t) + ρ f(t)) dt, with s our stigmas, o our own
 * pollen, f the foreign pollen (normal curves of area 1) and ρ how much foreign pollen comes in all for each part of our own.
 * 0..1, to 1e-6 relative or 1e-12. Example: ρ 0.1, foreign 5 days later, sd 2 throughout: 0.039.
 */
export function stigmaShare(
  stigma: FloweringCurve,
  own: FloweringCurve,
  foreign: FloweringCurve,
  loadRatio: number,
): number {
  if (loadRatio === 0) return 0;
  // ln(ρ f/o) = a t² + b t + c about the stigmas' peak, in their standard deviations
  const scaled = (curve: FloweringCurve) => ({ at: (curve.peak - stigma.peak) / stigma.sd, sd: curve.sd / stigma.sd });
  const [o, f] = [scaled(own), scaled(foreign)];
  const logRatio = (t: number) =>
    Math.log(loadRatio) + Math.log(o.sd / f.sd) + ((t - o.at) / o.sd) ** 2 / 2 - ((t - f.at) / f.sd) ** 2 / 2;
  const a = 1 / (2 * o.sd ** 2) - 1 / (2 * f.sd ** 2);
  const b = f.at / f.sd ** 2 - o.at / o.sd ** 2;
  const c = logRatio(0);
  const density = (t: number) => Math.exp((-t * t) / 2) / Math.sqrt(2 * Math.PI);
  const met = (t: number) => density(t) / (1 + Math.exp(-logRatio(t)));
  return adaptiveIntegral(met, -reach, reach, [...turns(a, b, c), 0, o.at, f.at], { relative: 1e-11, absolute: 1e-16 });
}

/** The days on which own and foreign pollen are alike in amount, where there are any. */
function turns(a: number, b: number, c: number): number[] {
  if (a === 0) return b === 0 ? [] : [-c / b];
  const inside = b * b - 4 * a * c;
  if (inside < 0) return [-b / (2 * a)];
  const q = -(b + Math.sign(b || 1) * Math.sqrt(inside)) / 2;
  return q === 0 ? [0] : [q / a, c / q];
}

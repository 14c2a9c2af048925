import { bellBounds } from "@/lib/science/quadrature/bell-bounds";
import type { ForecastModel } from "@/lib/science/seed-life/forecast-model";
import { DEPTH, EVERYWHERE } from "@/lib/science/seed-life/reach";

/** The posterior along Ki at one σ, on equal steps. */
export interface KiCurve {
  readonly from: number;
  readonly step: number;
  /** ln of the whole mass at this σ */
  readonly lnMass: number;
  /** density and its slope at each step, the mass below it, all as parts of the whole */
  readonly density: Float64Array;
  readonly slope: Float64Array;
  readonly below: Float64Array;
  readonly mean: number;
  readonly meanSquare: number;
}

/** The likeliest Ki at one σ: Newton's steps on a curve that bends down everywhere. */
export function likeliestKi(
  model: ForecastModel,
  lnSigma: number,
  start: number,
): { ki: number; sd: number; value: number } {
  let ki = start;
  let at = model(ki, lnSigma);
  for (let round = 0; round < 100; round++) {
    const bend = at.bend < 0 ? at.bend : -1;
    const step = Math.max(-5, Math.min(5, -at.slope / bend));
    let next = model(ki + step, lnSigma);
    let part = step;
    for (let halving = 0; next.value < at.value && halving < 40; halving++) {
      part /= 2;
      next = model(ki + part, lnSigma);
    }
    ki += part;
    at = next;
    if (Math.abs(part) < 1e-6) break;
  }
  return { ki, sd: 1 / Math.sqrt(at.bend < 0 ? -at.bend : 1), value: at.value };
}

/** Works the curve out with so many steps between the bounds that hold all of it. */
export function kiCurve(
  model: ForecastModel,
  lnSigma: number,
  start: number,
  steps: number,
): KiCurve & { top: number } {
  const top = likeliestKi(model, lnSigma, start);
  const logarithm = (ki: number) => model(ki, lnSigma).value;
  const [from, to] = bellBounds(logarithm, top.ki, 2 * top.sd, EVERYWHERE, DEPTH);
  const step = (to - from) / steps;
  const density = new Float64Array(steps + 1);
  const slope = new Float64Array(steps + 1);
  const below = new Float64Array(steps + 1);
  let mass = 0;
  let first = 0;
  let second = 0;
  for (let i = 0; i <= steps; i++) {
    const ki = from + i * step;
    const at = model(ki, lnSigma);
    const height = Math.exp(at.value - top.value);
    density[i] = height;
    slope[i] = height * at.slope;
    mass += height;
    first += height * ki;
    second += height * ki * ki;
    // the cubic through both heights and slopes
    if (i > 0) {
      const before = density[i - 1] as number;
      const bent = (step / 12) * ((slope[i - 1] as number) - (slope[i] as number));
      below[i] = (below[i - 1] as number) + step * ((before + height) / 2 + bent);
    }
  }
  const whole = mass * step;
  for (const column of [density, slope, below]) {
    for (let i = 0; i <= steps; i++) column[i] = (column[i] as number) / whole;
  }
  const lnMass = top.value + Math.log(whole);
  return { from, step, lnMass, density, slope, below, mean: first / mass, meanSquare: second / mass, top: top.ki };
}

/** The part of the mass at or below this Ki: between two steps by the quartic that the curve's cubic integrates to. */
export function massBelow({ from, step, density, slope, below }: KiCurve, ki: number): number {
  const steps = density.length - 1;
  const place = (ki - from) / step;
  if (!(place > 0)) return 0;
  if (place >= steps) return 1;
  const i = Math.floor(place);
  const t = place - i;
  const [f0, f1] = [density[i] as number, density[i + 1] as number];
  const [d0, d1] = [(slope[i] as number) * step, (slope[i + 1] as number) * step];
  const t2 = t * t;
  const cubic =
    f0 * t + (d0 * t2) / 2 + ((3 * (f1 - f0) - 2 * d0 - d1) * t2 * t) / 3 + ((2 * (f0 - f1) + d0 + d1) * t2 * t2) / 4;
  return Math.min(1, Math.max(0, (below[i] as number) + step * cubic));
}

import { bellBounds } from "@/lib/science/quadrature/bell-bounds";
import type { ForecastModel, ForecastPrior } from "@/lib/science/seed-life/forecast-model";
import { type KiCurve, kiCurve, likeliestKi, massBelow } from "@/lib/science/seed-life/ki-curve";
import { DEPTH, EVERYWHERE } from "@/lib/science/seed-life/reach";

/** Mean and standard deviation of one unknown. */
export interface Spread {
  readonly mean: number;
  readonly sd: number;
}

export interface Posterior {
  readonly Ki: Spread;
  readonly lnSigmaYears: Spread;
  /** the chance that Ki is at most a bound that depends on σ (in years) */
  readonly chanceBelow: (kiAtMost: (sigmaYears: number) => number) => number;
}

/** The bounds of ln σ that hold all of the posterior. */
export function lnSigmaBounds(model: ForecastModel, prior: ForecastPrior): readonly [number, number] {
  const { mean, sd } = prior.lnSigmaYears;
  let ki = prior.Ki.mean;
  const profile = (lnSigma: number) => {
    const top = likeliestKi(model, lnSigma, ki);
    ki = top.ki;
    return top.value + Math.log(top.sd);
  };
  let best = mean;
  let stride = sd;
  let height = profile(mean);
  // climb with strides that grow while they help and shrink while they do not
  for (let round = 0; round < 200 && Math.abs(stride) > 1e-3 * sd; round++) {
    const there = profile(best + stride);
    if (there > height) {
      best += stride;
      height = there;
      stride *= 1.5;
    } else stride *= -0.5;
  }
  return bellBounds(profile, best, sd / 8, EVERYWHERE, DEPTH);
}

/** The posterior on so many equal steps along ln σ, and as many along Ki at each. */
export function posteriorOn(
  model: ForecastModel,
  prior: ForecastPrior,
  bounds: readonly [number, number],
  steps: number,
): Posterior {
  const [from, to] = bounds;
  const curves: { lnSigma: number; curve: KiCurve }[] = [];
  let start = prior.Ki.mean;
  for (let i = 0; i <= steps; i++) {
    const lnSigma = from + ((to - from) * i) / steps;
    const curve = kiCurve(model, lnSigma, start, steps);
    start = curve.top;
    curves.push({ lnSigma, curve });
  }
  const highest = Math.max(...curves.map(({ curve }) => curve.lnMass));
  const raw = curves.map(({ curve }) => Math.exp(curve.lnMass - highest));
  const total = raw.reduce((sum, mass) => sum + mass, 0);
  const weighted = curves.map((each, index) => ({
    ...each,
    sigmaYears: Math.exp(each.lnSigma),
    weight: (raw[index] as number) / total,
  }));
  const mean = (of: (each: (typeof weighted)[number]) => number) =>
    weighted.reduce((sum, each) => sum + each.weight * of(each), 0);

  const ki = mean(({ curve }) => curve.mean);
  const kiVariance = mean(({ curve }) => curve.meanSquare - 2 * ki * curve.mean + ki * ki);
  const lnSigma = mean((each) => each.lnSigma);
  const lnSigmaVariance = mean((each) => (each.lnSigma - lnSigma) ** 2);
  return {
    Ki: { mean: ki, sd: Math.sqrt(Math.max(0, kiVariance)) },
    lnSigmaYears: { mean: lnSigma, sd: Math.sqrt(lnSigmaVariance) },
    chanceBelow: (kiAtMost) =>
      Math.min(
        1,
        mean((each) => massBelow(each.curve, kiAtMost(each.sigmaYears))),
      ),
  };
}

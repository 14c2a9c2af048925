import { normalLogarithms } from "@/lib/science/distributions/normal-logarithms";

/** One germination test in the life of a lot. */
export interface ForecastTest {
  /** years since the harvest (or since the first test: one beginning for all) */
  readonly years: number;
  readonly sown: number;
  readonly normal: number;
}

interface NormalPrior {
  readonly mean: number;
  readonly sd: number;
}

/** What is known before the tests: two independent normal curves. */
export interface ForecastPrior {
  /** initial viability as a normal deviate: 1.65 is 95 % */
  readonly Ki: NormalPrior;
  /** ln of σ, the years in which viability falls by one normal deviate */
  readonly lnSigmaYears: NormalPrior;
}

/** ln of the posterior density, with its slope and bend along Ki. */
export interface LogDensity {
  readonly value: number;
  readonly slope: number;
  readonly bend: number;
}

/**
 * ln of prior times likelihood at Ki and ln σ, up to a constant.
 *
 *     normal ~ Binomial(sown, ceiling·Φ(Ki − years/σ)),  Ki and ln σ independent normal
 *
 * Tests in years and seeds, ceiling above 0 to 1. Source: the viability equation of Ellis & Roberts 1980, Ann. Bot. 45:13-30, fitted
 * as a probit line; prior and posterior as in any Bayesian text.
 */
export function forecastModel(tests: readonly ForecastTest[], prior: ForecastPrior, ceiling: number) {
  const lnCeiling = Math.log(ceiling);
  return (ki: number, lnSigma: number): LogDensity => {
    const rate = Math.exp(-lnSigma);
    const fromPrior = (ki - prior.Ki.mean) / prior.Ki.sd;
    const ofSigma = (lnSigma - prior.lnSigmaYears.mean) / prior.lnSigmaYears.sd;
    let value = -(fromPrior ** 2 + ofSigma ** 2) / 2;
    let slope = -fromPrior / prior.Ki.sd;
    let bend = -1 / prior.Ki.sd ** 2;
    for (const { years, sown, normal } of tests) {
      const u = ki - years * rate;
      const { density, below, above } = normalLogarithms(u);
      if (normal > 0) {
        const mills = Math.exp(density - below);
        value += normal * (lnCeiling + below);
        slope += normal * mills;
        bend -= normal * mills * (u + mills);
      }
      if (normal < sown) {
        const failed = ceiling === 1 ? above : Math.log(1 - ceiling + ceiling * Math.exp(above));
        const mills = Math.exp(lnCeiling + density - failed);
        value += (sown - normal) * failed;
        slope -= (sown - normal) * mills;
        bend += (sown - normal) * mills * (u - mills);
      }
    }
    return { value, slope, bend };
  };
}

export type ForecastModel = ReturnType<typeof forecastModel>;

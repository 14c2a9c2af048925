import type { ForecastPrior } from "@/lib/science/seed-life/forecast-model";

/** z(0.95) − z(0.70): seed that starts at 95 % and is called usable to 70 %. */
const USABLE_PROBITS = 1.12;

/**
 * What is known of a crop's seed before any test of the lot: the prior that viability-forecast starts from.
 *
 *     Ki ~ Normal(1.65, 0.5)          ln σ ~ Normal(ln(L/1.12), 0.8)          L: middle of the usual life, years
 *
 * Takes the usual life of usualLife (years, low ≤ high, above 0). A judgement, to be shown as such and left to be changed: Ki spans
 * 80 to 99 % initial germination, σ a factor of 3.7 either way.
 * Source: reading of household storage lists as the time from 95 % to 70 % germination; Ellis & Roberts 1980, Ann. Bot. 45:13-30
 * for the model.
 */
export function lifePrior(life: { readonly low: number; readonly high: number }): ForecastPrior {
  const middle = (life.low + life.high) / 2;
  return {
    Ki: { mean: 1.65, sd: 0.5 },
    lnSigmaYears: { mean: Math.log(middle / USABLE_PROBITS), sd: 0.8 },
  };
}

import { type Assumption, accepted, type Outcome } from "@/lib/science/outcome";
import type { ForecastPrior } from "@/lib/science/seed-life/forecast-model";
import { type ViabilityConstants, viability } from "@/lib/science/viability/viability";

/** Up to this warmth a store counts as cold, °C. */
const COLD_STORE = 10;
/** The longest σ that is believed before a lot's own tests say more, years. */
const LONGEST_COLD = 15;
const LONGEST_IN_A_ROOM = 10;
const DAYS_A_YEAR = 365.2425;

export interface StoredSeed {
  readonly constants: ViabilityConstants;
  /** wet basis, above 0 to below 100 */
  readonly moisturePercent: number;
  readonly temperatureC: number;
}

export interface StoragePrior {
  readonly prior: ForecastPrior;
  /** σ by the equation, years */
  readonly sigmaYears: number;
  /** the σ that was taken in its place, because nobody has seen seed live that long; null where the equation's own was taken */
  readonly longestYears: number | null;
  readonly assumed: readonly Assumption[];
}

/**
 * What the constants of a kind say of seed that is kept sealed, at one moisture and one warmth, before any test of the lot: the prior that
 * viability-forecast starts from.
 *
 *     Ki ~ Normal(1.65, 0.5)          ln σ ~ Normal(ln min(σ, longest), 1.0)          longest: 15 years at 10 °C or less, else 10 years
 *
 * σ by the equation of viability, in years of 365.2425 days. Refused: what viability refuses. A judgement, to be shown as such: one standard error
 * of KE alone is a factor of 2 to 3.5 in σ, long cold storage was over-rated by the equation and open shelves under-rated, so it is wider than the
 * usual life of lifePrior and bounded above. Outside 3 to 18 % moisture and 0 to 50 °C `assumed` says so.
 * Source: Ellis & Roberts 1980, Ann. Bot. 45:13-30; constants Ellis & Hong 2007, Seed Sci. Technol. 35:432-444; the bound by the review of
 * long-term storage in Front. Plant Sci. 2020, 11:1007.
 */
export function storagePrior({ constants, moisturePercent, temperatureC }: StoredSeed): Outcome<StoragePrior> {
  const Ki = { mean: 1.65, sd: 0.5 };
  const kept = viability({ constants, moisturePercent, temperatureC, Ki: Ki.mean });
  if (!kept.ok) return kept;
  const sigmaYears = kept.value.sigmaDays / DAYS_A_YEAR;
  const longest = temperatureC <= COLD_STORE ? LONGEST_COLD : LONGEST_IN_A_ROOM;
  return accepted({
    prior: { Ki, lnSigmaYears: { mean: Math.log(Math.min(sigmaYears, longest)), sd: 1 } },
    sigmaYears,
    longestYears: sigmaYears > longest ? longest : null,
    assumed: kept.value.assumed,
  });
}

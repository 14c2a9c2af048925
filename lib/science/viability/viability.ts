import { normalCdf, normalQuantile } from "@/lib/science/distributions/normal";
import { type Fault, faultsAmong, insideFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

/** Of one species; see viability-constants.json for those that were checked in their source. */
export interface ViabilityConstants {
  readonly KE: number;
  readonly CW: number;
  readonly CH: number;
  readonly CQ: number;
}

export interface StorageOfSeed {
  readonly constants: ViabilityConstants;
  /** wet basis, above 0 to below 100 */
  readonly moisturePercent: number;
  readonly temperatureC: number;
  /** share alive at the start, 0 to 1, neither of them; or Ki in its place */
  readonly initialViability?: number;
  readonly Ki?: number;
  readonly days?: number;
  /** a share alive, 0 to 1, neither of them */
  readonly threshold?: number;
}

export interface Viability {
  readonly Ki: number;
  readonly sigmaDays: number;
  /** null where no days are given */
  readonly viabilityAfter: number | null;
  /** 0 where already below; null where no threshold is given */
  readonly daysToThreshold: number | null;
  readonly assumed: readonly Assumption[];
}

/**
 * How long seed lives at a constant moisture and temperature, sealed.
 *
 *     log₁₀ σ = KE − CW·log₁₀ m − CH·t − CQ·t²;  v = Φ(Ki − days/σ);  Ki = Φ⁻¹(initial viability);  days to c: (Ki − Φ⁻¹(c))·σ
 *
 * m percent, wet basis; t °C; σ days. Refused: no constants, moisture outside 0 to 100, neither or both of initialViability and Ki, shares
 * of 0 or 1. Use it to rank storage, never as a date: one standard error of KE is a factor of 2 to 3.5 in σ, long cold storage was
 * over-rated by it and open shelves under-rated. Outside 3 to 18 % moisture and 0 to 50 °C `assumed` says so.
 * Source: Ellis & Roberts 1980, Ann. Bot. 45:13-30; constants Ellis & Hong 2007, Seed Sci. Technol. 35:432-444.
 */
export function viability(given: StorageOfSeed): Outcome<Viability> {
  const faults = storageFaults(given);
  if (faults.length > 0) return refused(...faults);
  const { constants, moisturePercent, temperatureC, days, threshold } = given;
  const { KE, CW, CH, CQ } = constants;
  const logarithm = KE - CW * Math.log10(moisturePercent) - CH * temperatureC - CQ * temperatureC ** 2;
  const sigmaDays = 10 ** logarithm;
  if (!Number.isFinite(sigmaDays) || sigmaDays === 0) {
    const needed = "constants, a moisture and a temperature of a seed store are needed";
    return refused(refusal("out-of-range", ["constants"], logarithm, "as log₁₀ σ is beyond any number", needed));
  }
  const Ki = given.Ki ?? normalQuantile(given.initialViability ?? 0.5);
  return accepted({
    Ki,
    sigmaDays,
    viabilityAfter: days === undefined ? null : normalCdf(Ki - days / sigmaDays),
    daysToThreshold: threshold === undefined ? null : Math.max(0, (Ki - normalQuantile(threshold)) * sigmaDays),
    assumed: outsideRange(moisturePercent, temperatureC),
  });
}

function outsideRange(moisture: number, temperature: number): Assumption[] {
  const assumed: Assumption[] = [];
  if (moisture < 3 || moisture > 18) {
    assumed.push({
      code: "outside-moisture",
      text: "the equation is known to hold between 3 and 18 % moisture; this lies outside",
    });
  }
  if (temperature < 0 || temperature > 50) {
    assumed.push({
      code: "outside-temperature",
      text: "the equation is known to hold between 0 and 50 °C; this lies outside",
    });
  }
  return assumed;
}

function storageFaults(given: StorageOfSeed): Refusal[] {
  const { constants, moisturePercent, initialViability, Ki, temperatureC, days, threshold } = given;
  const faults = faultsAmong(
    ...Object.entries(constants).map(([key, value]) => finiteFault(["constants", key], value)),
    moisturePercent > 0 && moisturePercent < 100
      ? undefined
      : refusal(
          "out-of-range",
          ["moisturePercent"],
          moisturePercent,
          "is no moisture of seed",
          "a percentage above 0 and below 100 is needed",
        ),
    finiteFault(["temperatureC"], temperatureC),
    insideFault([], "initialViability", initialViability),
    Ki === undefined ? undefined : finiteFault(["Ki"], Ki),
    days === undefined || days >= 0
      ? undefined
      : refusal("out-of-range", ["days"], days, "is no time in store", "a number of 0 or more is needed"),
    insideFault([], "threshold", threshold),
  );
  if (initialViability === undefined && Ki === undefined) {
    faults.push(
      refusal("missing", ["initialViability"], undefined, "stands there", "give the share alive at the start, or Ki"),
    );
  }
  if (initialViability !== undefined && Ki !== undefined) {
    faults.push(refusal("both", ["Ki"], Ki, "stands beside initialViability", "give one of the two"));
  }
  return faults;
}

function finiteFault(path: readonly string[], value: number): Fault {
  return Number.isFinite(value)
    ? undefined
    : refusal("out-of-range", path, value, "is no number", "a number is needed");
}

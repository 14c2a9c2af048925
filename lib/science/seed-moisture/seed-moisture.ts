import { type Fault, faultsAmong } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

export interface AirOfSeed {
  /** of the air that the seed has rested in, 0 to below 100 */
  readonly relativeHumidityPercent: number;
  readonly temperatureC: number;
  /** of the dry seed, 0 to below 100 */
  readonly oilPercent: number;
}

export interface SeedMoisture {
  /** wet basis */
  readonly moisturePercent: number;
  readonly assumed: readonly Assumption[];
}

/** Above this share of oil a seed counts as oily, for which the formula was fitted between 15 and 25 °C only. */
const OILY_PERCENT = 10;

/**
 * The moisture that seed comes to in air of a given humidity.
 *
 *     Me = (1 − Do)/(1.1 + T/90) · √(−440 ln(1 − RH));  m = 100 Me/(100 + Me)
 *
 * Me percent, dry basis; Do oil, share of the dry seed; RH 0..1; T °C; m percent, wet basis. Refused: humidity, oil outside 0 to below 100,
 * a temperature at or below −99 °C. Stated range: 10 to 70 % humidity, 0 to 40 °C (oily seed 15 to 25 °C); outside, `assumed` says so.
 * Seed that is drying stays one or two points above seed that is taking water up. Source: Cromarty, Ellis & Roberts 1982, The Design of
 * Seed Storage Facilities for Genetic Conservation.
 */
export function seedMoisture({ relativeHumidityPercent, temperatureC, oilPercent }: AirOfSeed): Outcome<SeedMoisture> {
  const faults = faultsAmong(
    percentFault("relativeHumidityPercent", relativeHumidityPercent),
    temperatureFault(temperatureC),
    percentFault("oilPercent", oilPercent),
  );
  if (faults.length > 0) return refused(...faults);
  const dry =
    ((1 - oilPercent / 100) / (1.1 + temperatureC / 90)) * Math.sqrt(-440 * Math.log1p(-relativeHumidityPercent / 100));
  return accepted({
    moisturePercent: (100 * dry) / (100 + dry) + 0,
    assumed: outsideRange(relativeHumidityPercent, temperatureC, oilPercent),
  });
}

function outsideRange(humidity: number, temperature: number, oil: number): Assumption[] {
  const assumed: Assumption[] = [];
  if (humidity < 10 || humidity > 70) {
    assumed.push({
      code: "outside-humidity",
      text: "the formula holds between 10 and 70 % humidity; this lies outside",
    });
  }
  const [least, most] = oil > OILY_PERCENT ? [15, 25] : [0, 40];
  if (temperature < least || temperature > most) {
    const kind = oil > OILY_PERCENT ? "oily" : "starchy";
    const text = `the formula holds for ${kind} seed between ${least} and ${most} °C; this lies outside`;
    assumed.push({ code: "outside-temperature", text });
  }
  return assumed;
}

function percentFault(key: string, given: number): Fault {
  if (given >= 0 && given < 100) return undefined;
  return refusal("out-of-range", [key], given, "is no such percentage", "a number from 0 to below 100 is needed");
}

function temperatureFault(given: number): Fault {
  if (Number.isFinite(given) && given > -99) return undefined;
  return refusal(
    "out-of-range",
    ["temperatureC"],
    given,
    "is outside the formula",
    "degrees Celsius above −99 are needed",
  );
}

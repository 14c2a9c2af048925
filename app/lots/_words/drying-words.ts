import type { Explanation } from "@/lib/display/explanation";
import { plainNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { temperature, type UnitSettings, weight } from "@/lib/display/units";
import type { DryingRead } from "@/lib/registry/drying/read-drying";
import { dryTo } from "@/lib/science/seed-moisture/dry-to";

type Drying = DryingRead["dryings"][number];
type Reading = DryingRead["readings"][number];

/** A percentage of the wet weight as it was read: "11.5 %". */
export function percentRead(percent: number | null): string | null {
  return percent === null ? null : `${plainNumber(percent, 1)}\u00a0%`;
}

/** Of what a reading is: "45 % humidity of the air at 18 °C, humidity card in the jar". */
export function readingWords(
  { relativeHumidityPercent, temperatureC, method, note }: Reading,
  units: UnitSettings,
): string {
  const air = relativeHumidityPercent === null ? "" : `${percentRead(relativeHumidityPercent)} humidity of the air`;
  const warm = temperatureC === null ? "" : `${air === "" ? "" : " "}at ${temperature(temperatureC, units)}`;
  return [`${air}${warm}`, method ?? "", note ?? ""].filter(Boolean).join(", ");
}

/** What a drying will weigh when it is dry enough; null where a number is missing. */
export function targetOf({ startGrams, startPercent, targetPercent }: Drying): number | null {
  if (startGrams === null || startPercent === null || targetPercent === null) return null;
  const target = dryTo({ grams: startGrams, moisturePercent: startPercent, targetPercent });
  return target.ok ? target.value.targetGrams : null;
}

/** How far a drying has come. */
export function standingOfDrying(drying: Drying, units: UnitSettings): string {
  const target = targetOf(drying);
  if (drying.endGrams === null)
    return target === null ? "still out" : `still out: dry enough at ${weight(target, units)}`;
  const days = drying.days === null ? "" : ` after ${counted(drying.days, "day")}`;
  const short = target !== null && drying.endGrams > target * 1.005 ? ", not yet as dry as planned" : "";
  return `${weight(drying.endGrams, units)}${days}${short}`;
}

/** How the weight of dry seed is worked out. */
export function targetExplanation(
  input: { grams: number; moisturePercent: number; targetPercent: number },
  targetGrams: number,
  units: UnitSettings,
): Explanation {
  return {
    title: "Weight when dry enough",
    answer: weight(targetGrams, units),
    formula: "grams · (100 − moisture now) / (100 − moisture wanted), percent of the wet weight",
    inputs: [
      { name: "weighs now", value: weight(input.grams, units) },
      { name: "moisture now", value: percentRead(input.moisturePercent) ?? "" },
      { name: "moisture wanted", value: percentRead(input.targetPercent) ?? "" },
    ],
    assumed: [],
    unsure:
      "It is as good as the moisture now: each percent that this is off moves the weight by about one part in a hundred.",
    sources: ["the dry matter stays the same"],
    calc: `echo '${JSON.stringify(input)}' | npm run --silent calc -- dry-to`,
  };
}

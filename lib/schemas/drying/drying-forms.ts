import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { day, decimal, neededField, openField, ticked, words } from "../lots/form-fields";

const percent = decimal({ atLeast: 0, atMost: 100 });
const whenDone = "write the day, or what is known of it, as 2026-10-04 or 2026-10";

/** How a moisture was found out. */
export const moistureMethods = [
  "meter",
  "weighed and dried in an oven",
  "humidity card in the jar",
  "by hand",
] as const;

/** A moisture reading: percent of the wet weight, or the air that the seed rests in. */
export function moistureReadingSchema(hemisphere: Hemisphere) {
  return z.object({
    on: neededField(day(hemisphere), whenDone),
    percent: openField(percent),
    relativeHumidityPercent: openField(percent),
    temperatureC: openField(decimal({ atLeast: -40, atMost: 70 })),
    method: openField(words),
    note: openField(words),
  });
}
export type MoistureReadingInput = z.output<ReturnType<typeof moistureReadingSchema>>;

/** A drying as it begins: what the seed weighs, how wet it is, how dry it shall be. */
export function dryingSchema(hemisphere: Hemisphere) {
  return z.object({
    on: neededField(day(hemisphere), whenDone),
    startGrams: neededField(decimal({ above: 0 }), "weigh what is laid out to dry"),
    startPercent: neededField(percent, "write its moisture now, or what it is taken for"),
    targetPercent: neededField(percent, "write how dry it shall be"),
    note: openField(words),
  });
}
export type DryingInput = z.output<ReturnType<typeof dryingSchema>>;

/** A drying that is over: what the seed weighs now. */
export function driedSchema(hemisphere: Hemisphere) {
  return z.object({
    on: neededField(day(hemisphere), whenDone),
    endGrams: neededField(decimal({ above: 0 }), "weigh it again"),
    wholeLot: ticked,
    note: openField(words),
  });
}
export type DriedInput = z.output<ReturnType<typeof driedSchema>>;

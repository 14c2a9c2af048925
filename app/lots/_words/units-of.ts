import { gramsTyped, metricUnits, type UnitSettings } from "@/lib/display/units";
import type { Settings } from "@/lib/schemas/settings";

/** The units that a steward reads in, by the settings. */
export function unitsOf({ units }: Pick<Settings, "units">): UnitSettings {
  return units === "metric" ? metricUnits : { weight: "oz", length: "ft", temperature: "F" };
}

/** A stored weight as it would have been typed in the steward's unit. */
export function weightAsTyped(grams: number, units: UnitSettings): string {
  const typed = grams / gramsTyped(1, units);
  return String(units.weight === "g" ? typed : Number(typed.toPrecision(6)));
}

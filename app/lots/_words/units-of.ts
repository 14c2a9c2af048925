import { metricUnits, type UnitSettings } from "@/lib/display/units";
import type { Settings } from "@/lib/schemas/settings";

/** The units that a steward reads in, by the settings. */
export function unitsOf({ units }: Pick<Settings, "units">): UnitSettings {
  return units === "metric" ? metricUnits : { weight: "oz", length: "ft", temperature: "F" };
}

import { plainNumber, significant, unknown, grams as weightInGrams, withUnit } from "./numbers";

/** The units a steward reads in. What is stored stays grams, metres and degrees Celsius. */
export interface UnitSettings {
  readonly weight: "g" | "oz";
  readonly length: "m" | "ft";
  readonly temperature: "C" | "F";
}

export const metricUnits: UnitSettings = { weight: "g", length: "m", temperature: "C" };

/** International avoirdupois ounce and international foot, exact by definition (1959). */
const gramsPerOunce = 28.349523125;
const metresPerFoot = 0.3048;

/** A stored weight in the steward's unit: "168.8 g", "5.95 oz". */
export function weight(grams: number | null, units: UnitSettings): string {
  if (units.weight === "g") return weightInGrams(grams);
  if (grams === null) return unknown;
  const ounces = grams / gramsPerOunce;
  if (grams > 0 && ounces < 0.005) return withUnit("below 0.01", "oz");
  return withUnit(plainNumber(ounces, Math.abs(ounces) < 100 ? 2 : 1), "oz");
}

/** A stored length or distance: "12.5 m", "41 ft"; above 100 only three figures are shown. */
export function distance(metres: number | null, units: UnitSettings): string {
  if (metres === null) return unknown;
  const value = units.length === "m" ? metres : metres / metresPerFoot;
  const shown = Math.abs(value) < 100 ? plainNumber(value, 1) : significant(value, 3);
  return withUnit(shown, units.length);
}

/** A stored temperature: "4 °C", "39.2 °F". */
export function temperature(celsius: number | null, units: UnitSettings): string {
  if (celsius === null) return unknown;
  const value = units.temperature === "C" ? celsius : (celsius * 9) / 5 + 32;
  return withUnit(plainNumber(value, 1), `°${units.temperature}`);
}

/** What was typed in the steward's unit, as grams to store. */
export function gramsTyped(typed: number, units: UnitSettings): number {
  return units.weight === "g" ? typed : typed * gramsPerOunce;
}

/** What was typed in the steward's unit, as metres to store. */
export function metresTyped(typed: number, units: UnitSettings): number {
  return units.length === "m" ? typed : typed * metresPerFoot;
}

/** What was typed in the steward's unit, as degrees Celsius to store. */
export function celsiusTyped(typed: number, units: UnitSettings): number {
  return units.temperature === "C" ? typed : ((typed - 32) * 5) / 9;
}

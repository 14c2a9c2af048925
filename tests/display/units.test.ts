import { expect, it } from "vitest";
import {
  celsiusTyped,
  distance,
  gramsTyped,
  metresTyped,
  metricUnits,
  temperature,
  type UnitSettings,
  weight,
} from "@/lib/display/units";

const other: UnitSettings = { weight: "oz", length: "ft", temperature: "F" };
const shown = (text: string) => text.replaceAll("\u00a0", "_");

it("weights are shown in grams or in ounces of 28.349523125 g", () => {
  expect(shown(weight(168.8, metricUnits))).toBe("168.8_g");
  // 168.8 / 28.349523125 = 5.9542 (by hand)
  expect(shown(weight(168.8, other))).toBe("5.95_oz");
  expect(shown(weight(0.1, other))).toBe("below 0.01_oz");
  expect(weight(null, other)).toBe("unknown");
});

it("distances are shown in metres or in feet of 0.3048 m", () => {
  expect(shown(distance(12.5, metricUnits))).toBe("12.5_m");
  expect(shown(distance(400, metricUnits))).toBe("400_m");
  // 12.5 / 0.3048 = 41.01
  expect(shown(distance(12.5, other))).toBe("41_ft");
  // 800 / 0.3048 = 2624.67
  expect(shown(distance(800, other))).toBe("2,620_ft");
  expect(distance(null, other)).toBe("unknown");
});

it("temperatures are shown in degrees Celsius or Fahrenheit", () => {
  expect(shown(temperature(4, metricUnits))).toBe("4_°C");
  expect(shown(temperature(4, other))).toBe("39.2_°F");
  expect(shown(temperature(-18, metricUnits))).toBe("−18_°C");
  expect(temperature(null, metricUnits)).toBe("unknown");
});

it("what is typed in a steward's unit is stored in the base unit", () => {
  expect(gramsTyped(2, other)).toBeCloseTo(56.69904625, 9);
  expect(gramsTyped(2, metricUnits)).toBe(2);
  expect(metresTyped(10, other)).toBeCloseTo(3.048, 12);
  expect(celsiusTyped(212, other)).toBe(100);
});

import { expect, it } from "vitest";
import { spindle, uprightSpindle } from "@/components/doubt/spindle";

it("is drawn out to a point at both ends and thickest at the value", () => {
  const path = spindle(10, 50, 20, 8, 6);
  expect(path.startsWith("M10 8")).toBe(true);
  // the upper and the lower side pass the value at half the thickness from the line
  expect(path).toContain("20 5C");
  expect(path).toContain("20 11C");
  expect(path).toContain("50 8C");
  expect(path.endsWith("10 8Z")).toBe(true);
});

it("upright, has the same points with across and down exchanged", () => {
  const pairs = (path: string) => [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, a, b]) => [a, b]);
  expect(pairs(uprightSpindle(10, 50, 20, 8, 6))).toEqual(pairs(spindle(10, 50, 20, 8, 6)).map(([a, b]) => [b, a]));
});

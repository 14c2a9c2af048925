import { expect, it } from "vitest";
import { normalCdf, normalQuantile, twoSidedNormal, twoSidedNormalChance } from "@/lib/science/distributions/normal";

// SciPy 1.17: special.ndtri and special.ndtr
it.each([
  [1e-100, -21.273453560965322],
  [1e-20, -9.262340089798409],
  [1e-6, -4.753424308822899],
  [0.025, -1.959963984540054],
  [0.975, 1.959963984540054],
])("the normal quantile of %d is %d", (p, z) => {
  expect(Math.abs(normalQuantile(p) / z - 1)).toBeLessThan(1e-13);
});

it("a chance in the far tail keeps its digits", () => {
  expect(normalCdf(-20) / 2.7536241186062337e-89).toBeCloseTo(1, 12);
});

it("both tails together: 1.96 at 5 %", () => {
  expect(twoSidedNormal(0.05)).toBeCloseTo(1.959963984540054, 14);
  expect(twoSidedNormalChance(1.959963984540054)).toBeCloseTo(0.05, 14);
});

import { expect, it } from "vitest";
import { chiSquareUpperTail } from "@/lib/science/distributions/chi-square";

// SciPy 1.17: stats.chi2.sf
it.each([
  [3.841458820694124, 1, 0.05],
  [10.86, 3, 0.0125075044],
  [0, 3, 1],
])("beyond %d on %d degrees lies %d", (x, degrees, chance) => {
  expect(chiSquareUpperTail(x, degrees)).toBeCloseTo(chance, 8);
});

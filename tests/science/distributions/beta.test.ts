import { expect, it } from "vitest";
import { betaCdf, betaQuantile } from "@/lib/science/distributions/beta";

// SciPy 1.17: stats.beta.ppf; the last by summing the binomial at 40 digits, where SciPy is off by 1e-8
it.each([
  [0.025, 18, 3, 0.6830172859809177],
  [0.025, 0.5, 20.5, 2.4246478459242733e-5],
  [1e-12, 50, 51, 0.18469101876022248],
  [0.975, 1000, 999_001, 0.0010628871719771367],
])("the %d quantile of Beta(%d, %d) is %d", (p, a, b, x) => {
  expect(Math.abs(betaQuantile(p, a, b) / x - 1)).toBeLessThan(1e-11);
});

it("nothing lies outside 0 to 1", () => {
  expect([betaCdf(-0.1, 2, 3), betaCdf(0, 2, 3), betaCdf(1, 2, 3), betaCdf(1.5, 2, 3)]).toEqual([0, 0, 1, 1]);
});

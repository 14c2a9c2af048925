import { describe, expect, it } from "vitest";
import { forecastModel } from "@/lib/science/seed-life/forecast-model";
import { kiCurve, likeliestKi, massBelow } from "@/lib/science/seed-life/ki-curve";
import { lnSigmaBounds, posteriorOn } from "@/lib/science/seed-life/posterior";
import { quantileOfYears } from "@/lib/science/seed-life/quantile-of-years";

const prior = { Ki: { mean: 1.65, sd: 0.5 }, lnSigmaYears: { mean: 1, sd: 0.8 } };
const noTests = forecastModel([], prior, 1);

describe("without tests the posterior is the prior", () => {
  it("Ki has its mean, its spread and its quantiles at any σ (Φ(−1) = 0.158655)", () => {
    const curve = kiCurve(noTests, 1.7, 0, 48);
    expect(curve.mean).toBeCloseTo(1.65, 8);
    expect(massBelow(curve, 1.15)).toBeCloseTo(0.158655, 4);
    expect([massBelow(curve, -50), massBelow(curve, 50)]).toEqual([0, 1]);
  });

  it("ln σ is followed at least five spreads either way", () => {
    const [low, high] = lnSigmaBounds(noTests, prior);
    expect(low).toBeLessThan(1 - 5 * 0.8);
    expect(high).toBeGreaterThan(1 + 5 * 0.8);
    expect(posteriorOn(noTests, prior, [low, high], 48).lnSigmaYears.sd).toBeCloseTo(0.8, 6);
  });
});

describe("the likelihood", () => {
  const tests = [
    { years: 0, sown: 100, normal: 90 },
    { years: 4, sown: 100, normal: 80 },
  ];

  it("of two tests alone is highest where the line goes through both: Ki 1.2816, σ 9.09 years (closed form)", () => {
    const flat = { Ki: { mean: 0, sd: 1e6 }, lnSigmaYears: { mean: 0, sd: 1e6 } };
    const model = forecastModel(tests, flat, 1);
    const { ki, value } = likeliestKi(model, Math.log(1 / 0.10998258), 0);
    expect(ki).toBeCloseTo(1.28155157, 6);
    expect(value).toBeGreaterThan(likeliestKi(model, Math.log(8.5), 0).value);
    expect(value).toBeGreaterThan(likeliestKi(model, Math.log(9.8), 0).value);
  });

  it("has the slope and the bend that its values have, with a ceiling too", () => {
    for (const ceiling of [1, 0.93]) {
      const model = forecastModel(tests, prior, ceiling);
      for (const ki of [-3, 0, 1.2, 2.5]) {
        const [before, at, after] = [ki - 1e-4, ki, ki + 1e-4].map((x) => model(x, 1.3));
        expect(at?.slope).toBeCloseTo(((after?.value ?? 0) - (before?.value ?? 0)) / 2e-4, 3);
        expect(at?.bend).toBeCloseTo(((after?.slope ?? 0) - (before?.slope ?? 0)) / 2e-4, 3);
      }
    }
  });
});

describe("years of a chance", () => {
  it("are found on any scale: the half of an exponential of mean 1e-6, 1 and 1e6 years is ln 2 of it", () => {
    for (const mean of [1e-6, 1, 1e6]) {
      const years = quantileOfYears((t) => -Math.expm1(-t / mean), 0.5, 1);
      expect(years / mean).toBeCloseTo(Math.LN2, 6);
    }
  });

  it("are 0 where the chance is there from the beginning, without end where it never comes", () => {
    expect(quantileOfYears(() => 1, 0.5, 1)).toBe(0);
    expect(quantileOfYears(() => 0.2, 0.5, 1)).toBe(Number.POSITIVE_INFINITY);
  });
});

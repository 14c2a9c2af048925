import { describe, expect, it } from "vitest";
import { type ViabilityForecastInput, viabilityForecast } from "@/lib/science/seed-life/viability-forecast";
import { answered, expectAgreement, pathsOf, referenceCases, type Tolerance } from "../agreement";

const prior = { Ki: { mean: 1.65, sd: 0.5 }, lnSigmaYears: { mean: Math.log(5), sd: 0.8 } };
const forecast = (tests: [number, number, number][], threshold: ViabilityForecastInput["threshold"], more = {}) =>
  answered(
    viabilityForecast({
      tests: tests.map(([years, normal, sown]) => ({ years, normal, sown })),
      prior,
      threshold,
      ...more,
    }),
  );

describe("worked forecasts", () => {
  // a grid of 400 × 400 by an independent program, checked by importance sampling
  it("one test, 18 of 20: to 85 % of the beginning 0.8, 3.2, 13 years; that is the kind speaking", () => {
    const { yearsToThreshold, Ki, lnSigmaYears } = forecast([[0, 18, 20]], { ofInitial: 0.85 });
    expect(yearsToThreshold.low).toBeCloseTo(0.801, 2);
    expect(yearsToThreshold.median).toBeCloseTo(3.226, 2);
    expect(yearsToThreshold.high).toBeCloseTo(13.01, 1);
    expect(Ki.mean).toBeCloseTo(1.44453899, 6);
    expect(lnSigmaYears.mean).toBeCloseTo(Math.log(5), 6);
  });

  it("a rise from 18 to 19 of 20 in four years: 4.0, 8.1, 22 years", () => {
    const { yearsToThreshold, Ki, lnSigmaYears } = forecast(
      [
        [0, 18, 20],
        [4, 19, 20],
      ],
      { ofInitial: 0.85 },
    );
    expect(yearsToThreshold.low).toBeCloseTo(3.96, 1);
    expect(yearsToThreshold.median).toBeCloseTo(8.13, 1);
    expect(yearsToThreshold.high).toBeCloseTo(22, 0);
    expect(Ki.mean).toBeCloseTo(1.68251445, 4);
    expect(lnSigmaYears.mean).toBeCloseTo(2.37522452, 4);
  });

  it("four tests in nine years: to 75 % in 8.4, 10.1, 13.2 years", () => {
    const tests: [number, number, number][] = [
      [0, 96, 100],
      [3, 47, 50],
      [6, 44, 50],
      [9, 78, 100],
    ];
    const { yearsToThreshold } = forecast(tests, 0.75);
    expect(yearsToThreshold.low).toBeCloseTo(8.4, 1);
    expect(yearsToThreshold.median).toBeCloseTo(10.1, 1);
    expect(yearsToThreshold.high).toBeCloseTo(13.2, 1);
  });
});

it("agrees with 300 forecasts summed over a grid of 2.5 million cells, to 1e-3", () => {
  const tolerance: Tolerance = { relative: 1e-3, absolute: 1e-3 };
  for (const { input, expected } of referenceCases<ViabilityForecastInput>("viability-forecast")) {
    expectAgreement(answered(viabilityForecast(input)), expected, tolerance);
  }
});

describe("without tests", () => {
  it("the kind's own prior comes back, and it is said so", () => {
    const result = forecast([], 0.75);
    expect(result.Ki.mean).toBeCloseTo(1.65, 9);
    expect(result.Ki.sd).toBeCloseTo(0.5, 6);
    expect(result.lnSigmaYears.sd).toBeCloseTo(0.8, 6);
    expect(result.assumed.map(({ code }) => code)).toEqual(["no-tests", "all-could-germinate"]);
    // Φ((0.6745 − 1.65)/0.5): the part of the prior that starts below 75 %
    expect(result.probabilityBelowNow).toBeCloseTo(0.025527, 5);
  });
});

describe("edges", () => {
  it("a threshold that no lot can stand above is reached at the beginning", () => {
    expect(forecast([[0, 18, 20]], 0.95, { ceiling: 0.9 })).toMatchObject({
      yearsToThreshold: { median: 0, low: 0, high: 0 },
      probabilityBelowNow: 1,
    });
  });

  it("all of the beginning is lost at once: 0 years, though nothing is below it yet", () => {
    expect(forecast([], { ofInitial: 1 })).toMatchObject({ yearsToThreshold: { median: 0 }, probabilityBelowNow: 0 });
    expect(forecast([[2, 18, 20]], { ofInitial: 1 }).probabilityBelowNow).toBe(1);
  });

  it("a dead lot is below now", () => {
    const { probabilityBelowNow, yearsToThreshold } = forecast([[1, 0, 400]], 0.75);
    expect(probabilityBelowNow).toBeGreaterThan(0.999);
    expect(yearsToThreshold.high).toBeLessThan(1);
  });

  it("a large test late in life leaves years that hang on each other: T is 5 and 0.167 σ", () => {
    const { yearsToThreshold } = forecast([[5, 8000, 10_000]], 0.75);
    expect(yearsToThreshold.low).toBeGreaterThan(5.4);
    expect(yearsToThreshold.high).toBeLessThan(8.2);
  });

  it("the order of the tests does not matter", () => {
    const tests: [number, number, number][] = [
      [0, 45, 50],
      [3, 40, 50],
      [6, 30, 50],
    ];
    expectAgreement(forecast([...tests].reverse(), 0.75), forecast(tests, 0.75), { relative: 1e-6, absolute: 1e-9 });
  });

  it("a wide prior and a perfect large test are integrated all the same", () => {
    const wide = { Ki: { mean: 1.65, sd: 2 }, lnSigmaYears: { mean: 1, sd: 2 } };
    const tests = [{ years: 0, sown: 400, normal: 400 }];
    const { Ki } = answered(viabilityForecast({ tests, prior: wide, threshold: 0.75 }));
    // ∫ K Φ(K)⁴⁰⁰ φ((K − 1.65)/2) dK over its mass, by quadrature (SciPy 1.17 integrate.quad)
    expect(Ki.mean).toBeCloseTo(4.110404085239086, 4);
  });
});

describe("refusals", () => {
  const good: ViabilityForecastInput = { tests: [{ years: 1, sown: 20, normal: 18 }], prior, threshold: 0.75 };
  it.each<[string, ViabilityForecastInput, (string | number)[]]>([
    ["years before the harvest", { ...good, tests: [{ years: -1, sown: 20, normal: 18 }] }, ["tests", 0, "years"]],
    ["years beyond any seed", { ...good, tests: [{ years: 1e308, sown: 20, normal: 18 }] }, ["tests", 0, "years"]],
    ["more germinated than sown", { ...good, tests: [{ years: 1, sown: 20, normal: 21 }] }, ["tests", 0, "normal"]],
    ["a prior without spread", { ...good, prior: { ...prior, Ki: { mean: 1, sd: 0 } } }, ["prior", "Ki", "sd"]],
    [
      "a prior beyond any seed",
      { ...good, prior: { ...prior, lnSigmaYears: { mean: 1e308, sd: 1 } } },
      ["prior", "lnSigmaYears", "mean"],
    ],
    ["a threshold of 0", { ...good, threshold: 0 }, ["threshold"]],
    ["a threshold in percent", { ...good, threshold: 75 }, ["threshold"]],
    ["a part of 0", { ...good, threshold: { ofInitial: 0 } }, ["threshold", "ofInitial"]],
    ["a ceiling of 0", { ...good, ceiling: 0 }, ["ceiling"]],
  ])("%s are refused at their place", (_, input, path) => {
    expect(pathsOf(viabilityForecast(input))).toEqual([path]);
  });
});

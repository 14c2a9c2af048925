import { expect, it } from "vitest";
import { thousandSeedWeight } from "@/lib/science/seed-weight/thousand-seed-weight";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

it("eight printed weights of 100 seeds are 2.133 g a thousand, spread 2.01 %, 469 a gram (AOSA tutorial 2001)", () => {
  const weights = [0.2224, 0.2134, 0.213, 0.2116, 0.2145, 0.2071, 0.2116, 0.2125];
  const result = answered(thousandSeedWeight({ counts: weights.map((grams) => ({ seeds: 100, grams })) }));
  expect(result.thousandSeedGrams).toBeCloseTo(2.132625, 9);
  expect(result.cvPercent).toBeCloseTo(2.01449243, 7);
  expect(result.seedsPerGram).toBeCloseTo(468.90569134, 7);
});

it("a single weighing has no spread", () => {
  expect(answered(thousandSeedWeight({ counts: [{ seeds: 25, grams: 10 }] }))).toEqual({
    thousandSeedGrams: 400,
    cvPercent: null,
    seedsPerGram: 2.5,
    assumed: [],
  });
});

it("samples of unlike size count by their seeds, not each alike (10 g of 30 seeds and 2 g of 10: 300 g)", () => {
  const counts = [
    { seeds: 30, grams: 10 },
    { seeds: 10, grams: 2 },
  ];
  expect(answered(thousandSeedWeight({ counts })).thousandSeedGrams).toBeCloseTo(300, 12);
});

it("no sample, no seed and no weight are refused at their place", () => {
  expect(pathsOf(thousandSeedWeight({ counts: [] }))).toEqual([["counts"]]);
  expect(pathsOf(thousandSeedWeight({ counts: [{ seeds: 0, grams: 1 }] }))).toEqual([["counts", 0, "seeds"]]);
  expect(pathsOf(thousandSeedWeight({ counts: [{ seeds: 5, grams: 0 }] }))).toEqual([["counts", 0, "grams"]]);
});

it("agrees with 300 cases in exact fractions", () => {
  for (const { input, expected } of referenceCases<Parameters<typeof thousandSeedWeight>[0]>("thousand-seed-weight")) {
    expectAgreement(answered(thousandSeedWeight(input)), expected);
  }
});

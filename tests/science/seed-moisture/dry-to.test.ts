import { expect, it } from "vitest";
import { type DryToInput, dryTo } from "@/lib/science/seed-moisture/dry-to";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

it("200 g at 12 % weigh 187.23 g at 6 % (176 g of dry matter over 0.94)", () => {
  expect(answered(dryTo({ grams: 200, moisturePercent: 12, targetPercent: 6 })).targetGrams).toBeCloseTo(
    176 / 0.94,
    10,
  );
});

it("seed dried to nothing but itself weighs its dry matter", () => {
  expect(answered(dryTo({ grams: 50, moisturePercent: 20, targetPercent: 0 })).targetGrams).toBeCloseTo(40, 12);
});

it.each<[string, DryToInput, string[]]>([
  ["a target that is not below the present", { grams: 9, moisturePercent: 8, targetPercent: 8 }, ["targetPercent"]],
  ["nothing to weigh", { grams: 0, moisturePercent: 12, targetPercent: 6 }, ["grams"]],
  ["nothing but water", { grams: 9, moisturePercent: 100, targetPercent: 6 }, ["moisturePercent"]],
  ["less than no moisture", { grams: 9, moisturePercent: 12, targetPercent: -1 }, ["targetPercent"]],
])("%s is refused at its place", (_, input, path) => {
  expect(pathsOf(dryTo(input))).toEqual([path]);
});

it("agrees with 300 cases in exact fractions", () => {
  for (const { input, expected } of referenceCases<DryToInput>("dry-to")) {
    expectAgreement(answered(dryTo(input)), expected);
  }
});

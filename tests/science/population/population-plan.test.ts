import { describe, expect, it } from "vitest";
import { type PopulationPlanInput, populationPlan } from "@/lib/science/population/population-plan";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

describe("plants that keep what must be kept", () => {
  it("90 % over 20 grow-outs needs Ne 95.2, 95 % over ten 97.7", () => {
    const needed = (retain: number, years: number) =>
      answered(populationPlan({ retain, years, yearsBetweenGrowOuts: 1 })).effectiveSizeNeeded;
    expect(needed(0.9, 20)).toBeCloseTo(95.16, 2);
    expect(needed(0.95, 10)).toBeCloseTo(97.7, 1);
  });

  it("seed from half the plants asks for 119, of which 60 (4/(1/60 + 3/119) = 95.5; 118 give 94.4)", () => {
    const plan = answered(populationPlan({ retain: 0.9, years: 60, yearsBetweenGrowOuts: 3, seedParentShare: 0.5 }));
    expect(plan).toMatchObject({ generations: 20, floweringPlants: 119, seedParents: 60 });
  });

  it("separate sexes count males and females together: 96 for Ne 95.2", () => {
    const plan = answered(populationPlan({ retain: 0.9, years: 20, yearsBetweenGrowOuts: 1, sexes: "separate" }));
    expect(plan).toMatchObject({ floweringPlants: 96, seedParents: 48 });
  });

  it("30 years at 0.1 between are 300 grow-outs, not 301 by rounding", () => {
    expect(answered(populationPlan({ retain: 0.5, years: 30, yearsBetweenGrowOuts: 0.1 })).generations).toBe(300);
  });
});

it("agrees with 300 plans searched plant by plant in exact fractions", () => {
  for (const { input, expected } of referenceCases<PopulationPlanInput>("population-plan")) {
    expectAgreement(answered(populationPlan(input)), expected);
  }
});

describe("refusals", () => {
  const good = { retain: 0.9, years: 20, yearsBetweenGrowOuts: 1 };
  it.each<[string, PopulationPlanInput, string[]]>([
    ["all of it kept", { ...good, retain: 1 }, ["retain"]],
    ["no years", { ...good, years: 0 }, ["years"]],
    ["no years between", { ...good, yearsBetweenGrowOuts: 0 }, ["yearsBetweenGrowOuts"]],
    ["seed of no plant", { ...good, seedParentShare: 0 }, ["seedParentShare"]],
    ["selfing with separate sexes", { ...good, sexes: "separate", selfingRate: 0.5 }, ["selfingRate"]],
    ["a spread below 0", { ...good, seedCv: -1 }, ["seedCv"]],
  ])("%s is refused at its place", (_, input, path) => {
    expect(pathsOf(populationPlan(input))).toEqual([path]);
  });
});

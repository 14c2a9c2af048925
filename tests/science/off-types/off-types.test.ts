import { describe, expect, it } from "vitest";
import { type OffTypesFoundInput, offTypesFound } from "@/lib/science/off-types/off-types-found";
import { type PlantsToSeeOneInput, plantsToSeeOne } from "@/lib/science/off-types/plants-to-see-one";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

describe("off-types found in a sample", () => {
  // an independent program; 0 of n is 1 − 0.05^(1/n) in closed form
  it.each([
    [0, 100, 0.02951305],
    [1, 200, 0.02349847],
    [3, 400, 0.01926923],
  ])("%d of %d: the share is hardly above %d", (found, sampled, upperBound) => {
    expect(answered(offTypesFound({ found, sampled })).upperBound).toBeCloseTo(upperBound, 7);
  });

  it("6 of 400 lies within 0.55 % to 3.24 % (exact, two-sided)", () => {
    const { share, interval } = answered(offTypesFound({ found: 6, sampled: 400 }));
    expect(share).toBe(0.015);
    expect(interval.low).toBeCloseTo(0.005524109504580662, 9);
    expect(interval.high).toBeCloseTo(0.032361294480775016, 9);
  });

  it("all of them off-type leaves no room above", () => {
    expect(answered(offTypesFound({ found: 5, sampled: 5 }))).toMatchObject({
      share: 1,
      upperBound: 1,
      interval: { high: 1 },
    });
  });

  it.each<[string, OffTypesFoundInput, string[]]>([
    ["nothing looked at", { sampled: 0, found: 0 }, ["sampled"]],
    ["more found than looked at", { sampled: 10, found: 11 }, ["found"]],
    ["half an off-type", { sampled: 10, found: 0.5 }, ["found"]],
    ["confidence 0", { sampled: 10, found: 1, confidence: 0 }, ["confidence"]],
  ])("%s is refused at its place", (_, input, path) => {
    expect(pathsOf(offTypesFound(input))).toEqual([path]);
  });
});

describe("plants to see at least one", () => {
  // ⌈ln 0.05/ln(1 − f)⌉, and 919 as printed for 0.5 % at 99 %
  it.each([
    [0.01, 0.95, 299],
    [0.001, 0.95, 2995],
    [0.05, 0.95, 59],
    [0.005, 0.99, 919],
    [0.5, 0.75, 2],
    [0.5, 0.875, 3],
    [1, 0.99, 1],
  ])("at %d, with confidence %d: %d plants", (frequency, confidence, plants) => {
    expect(answered(plantsToSeeOne({ frequency, confidence })).plants).toBe(plants);
  });

  it.each<[string, PlantsToSeeOneInput, string[]]>([
    ["a frequency of 0", { frequency: 0 }, ["frequency"]],
    ["a frequency in percent", { frequency: 5 }, ["frequency"]],
    ["certainty", { frequency: 0.1, confidence: 1 }, ["confidence"]],
  ])("%s is refused at its place", (_, input, path) => {
    expect(pathsOf(plantsToSeeOne(input))).toEqual([path]);
  });
});

it("agrees with 300 samples worked out at 30 digits", () => {
  for (const { input, expected } of referenceCases<OffTypesFoundInput | PlantsToSeeOneInput>("off-types")) {
    const outcome = "frequency" in input ? plantsToSeeOne(input) : offTypesFound(input);
    expectAgreement(answered<object>(outcome), expected);
  }
});

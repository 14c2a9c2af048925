import { describe, expect, it } from "vitest";
import { type AlleleCaptureInput, alleleCapture } from "@/lib/science/population/allele-capture";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

describe("plants to catch a rare allele", () => {
  it("5 % at 95 % takes 30 plants of an outbreeder and 59 of a selfer (Brown & Marshall 1995)", () => {
    expect(answered(alleleCapture({ frequency: 0.05, probability: 0.95 })).plants).toBe(30);
    expect(answered(alleleCapture({ frequency: 0.05, probability: 0.95, inbreeding: 1 })).plants).toBe(59);
  });

  it("ten genes at 90 % take 88.87 single draws (Crossa et al. 1993: 89), so 89 inbred plants or 45 outbred", () => {
    const ten = { frequency: 0.05, probability: 0.9, loci: 10 };
    expect(answered(alleleCapture({ ...ten, inbreeding: 1 })).plants).toBe(89);
    expect(answered(alleleCapture(ten)).plants).toBe(45);
  });

  it("what every plant has is caught with one", () => {
    expect(answered(alleleCapture({ frequency: 1, probability: 0.99 }))).toEqual({ plants: 1, assumed: [] });
  });
});

it("agrees with 300 searches at 30 digits", () => {
  for (const { input, expected } of referenceCases<AlleleCaptureInput>("allele-capture")) {
    expectAgreement(answered(alleleCapture(input)), expected);
  }
});

it.each<[string, AlleleCaptureInput, string[]]>([
  ["a frequency of 0", { frequency: 0, probability: 0.9 }, ["frequency"]],
  ["certainty", { frequency: 0.1, probability: 1 }, ["probability"]],
  ["no gene", { frequency: 0.1, probability: 0.9, loci: 0 }, ["loci"]],
  ["an inbreeding above 1", { frequency: 0.1, probability: 0.9, inbreeding: 2 }, ["inbreeding"]],
])("%s is refused at its place", (_, input, path) => {
  expect(pathsOf(alleleCapture(input))).toEqual([path]);
});

import { describe, expect, it } from "vitest";
import { type CropProfile, cropList, emptyProfile } from "@/lib/science/crops/crop-profile";
import { crossingOfPair } from "@/lib/science/isolation/crossing-of-pair";
import { distanceRule, type IsolationPurpose, isolationDistances } from "@/lib/science/isolation/distance-rule";
import { farLarger, neighbourVerdict } from "@/lib/science/isolation/neighbour-verdict";
import { isolationCases } from "./isolation-cases";

const crop = (key: unknown): CropProfile => {
  const found = cropList().find((each) => each.key === key);
  if (!found) throw new Error(`no crop ${key}`);
  return found;
};

describe("the shared cases", () => {
  it.each(isolationCases("ruleCheck"))("$name", ({ input, expected }) => {
    const [ours, theirs] = [crop(input.crop), crop(input.neighbour)];
    const { verdict } = neighbourVerdict({
      sameVariety: false,
      clonal: false,
      crossing: crossingOfPair(ours, theirs),
      distances: isolationDistances(ours, input.purpose as IsolationPurpose, null),
      distanceMetres: input.distanceM as number,
      overlap: null,
      apartAsSeen: false,
      sizeRatio: null,
    });
    expect(verdict).toBe(expected);
  });

  it.each(isolationCases("pairFactor"))("$name", ({ input, expected }) => {
    expect(crossingOfPair(crop(input.crop), crop(input.neighbour)).factor).toBe(expected);
  });
});

describe("a pair of crops", () => {
  it("is looked up alike from either side, for every two crops of the list", () => {
    const crops = cropList();
    for (const one of crops) {
      for (const other of crops) {
        expect(crossingOfPair(one, other), `${one.key} ${other.key}`).toEqual(crossingOfPair(other, one));
      }
    }
  });

  it("crosses fully with itself, before any row is read", () => {
    expect(crossingOfPair(crop("garlic"), crop("garlic"))).toMatchObject({
      degree: "full",
      factor: 1,
      by: "same-crop",
    });
  });

  it("of one group without a row crosses fully; a row of the two comes before their group", () => {
    expect(crossingOfPair(crop("bean-common"), crop("bean-runner"))).toMatchObject({ degree: "rare", by: "pair" });
    const [one, other] = [crop("carrot"), { ...crop("carrot"), key: "carrot-of-ours" }];
    expect(crossingOfPair(one, other)).toMatchObject({ degree: "full", by: "same-group" });
  });

  it("of several rows gives the highest factor", () => {
    const [row] = [crossingOfPair(crop("turnip"), crop("oilseed-rape")).pair];
    if (!row) throw new Error("no row");
    const rows = [row, { ...row, degree: "full", factor: 0.9 }, { ...row, degree: "rare", factor: 0.01 }];
    expect(crossingOfPair(crop("turnip"), crop("oilseed-rape"), rows)).toMatchObject({ degree: "full", factor: 0.9 });
  });

  it("is unknown, not none, with a crop of one's own or within one genus without a row", () => {
    expect(crossingOfPair(crop("carrot"), emptyProfile("bank vetch"))).toMatchObject({
      degree: "unknown",
      factor: null,
    });
    expect(crossingOfPair(crop("cabbage"), crop("mustard-brown")).degree).toBe("unknown");
    expect(crossingOfPair(emptyProfile("a"), emptyProfile("b")).degree).toBe("unknown");
  });
});

describe("the distances of the rule", () => {
  it("are those of our own crop by purpose (crop list: maize 50 to 200 m home, 200 to 800 m to keep)", () => {
    expect(isolationDistances(crop("maize-field"), "home", null)).toEqual({ min: 50, max: 200, from: "crop" });
    expect(isolationDistances(crop("maize-field"), "stewardship", null)).toEqual({ min: 200, max: 800, from: "crop" });
    expect(isolationDistances(emptyProfile("bank vetch"), "home", null)).toBeNull();
  });

  it("a distance wanted for the variety is the outer one, and the inner where it is shorter", () => {
    expect(isolationDistances(crop("maize-field"), "stewardship", 300)).toEqual({
      min: 200,
      max: 300,
      from: "variety",
    });
    expect(isolationDistances(crop("maize-field"), "stewardship", 80)).toEqual({ min: 80, max: 80, from: "variety" });
    expect(isolationDistances(emptyProfile("bank vetch"), "home", 40)).toEqual({ min: 40, max: 40, from: "variety" });
  });

  it("the boundary counts for the better", () => {
    const limits = { min: 50, max: 200, from: "crop" as const };
    expect([0, 49.9, 50, 199.9, 200].map((metres) => distanceRule(metres, limits))).toEqual([
      "too-close",
      "too-close",
      "marginal",
      "marginal",
      "ok",
    ]);
  });
});

describe("the verdict on a neighbour", () => {
  const facts = {
    sameVariety: false,
    clonal: false,
    crossing: crossingOfPair(crop("maize-field"), crop("maize-sweet")),
    distances: { min: 200, max: 800, from: "crop" as const },
    distanceMetres: 60,
    overlap: null,
    apartAsSeen: false,
    sizeRatio: null,
  };

  it("is not assessed where a distance, the distances of the crop or the crop itself is unknown", () => {
    expect(neighbourVerdict({ ...facts, distanceMetres: null })).toEqual({
      verdict: "not-assessed",
      reasons: ["distance-unknown", "time-unknown"],
    });
    expect(neighbourVerdict({ ...facts, distances: null }).verdict).toBe("not-assessed");
    expect(neighbourVerdict({ ...facts, crossing: null })).toEqual({
      verdict: "not-assessed",
      reasons: ["no-crop-named"],
    });
  });

  it("is ok at any distance where the flowering was seen to lie apart, not where it was told to, nor where it may meet", () => {
    const apart = { least: 0, most: 0 };
    expect(neighbourVerdict({ ...facts, overlap: apart, apartAsSeen: true })).toEqual({
      verdict: "ok",
      reasons: ["apart-in-time"],
    });
    expect(neighbourVerdict({ ...facts, overlap: apart })).toEqual({
      verdict: "too-close",
      reasons: ["within-inner", "apart-as-told"],
    });
    expect(neighbourVerdict({ ...facts, overlap: { least: 0, most: 2 } })).toEqual({
      verdict: "too-close",
      reasons: ["within-inner", "days-in-common"],
    });
    expect(neighbourVerdict({ ...facts, overlap: { least: 0, most: null } }).reasons).toContain("time-unknown");
  });

  it("names a source that crosses in part, and one that is far larger than the plot", () => {
    const crossing = crossingOfPair(crop("turnip"), crop("oilseed-rape"));
    const given = neighbourVerdict({ ...facts, crossing, distanceMetres: 900, sizeRatio: farLarger });
    expect(given).toEqual({
      verdict: "ok",
      reasons: ["beyond-outer", "crosses-in-part", "time-unknown", "far-larger"],
    });
  });

  it("pollen of the same variety is not foreign, and none matters to a crop kept by division", () => {
    expect(neighbourVerdict({ ...facts, sameVariety: true }).verdict).toBe("same-variety");
    expect(neighbourVerdict({ ...facts, clonal: true }).reasons).toEqual(["clonal"]);
  });
});

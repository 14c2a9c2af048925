import { describe, expect, it } from "vitest";
import crops from "@/lib/science/crops/crops.json";
import { germinationConditions } from "@/lib/science/germination/germination-conditions";
import { kindOfCrop } from "@/lib/science/germination/kind-of-crop";
import kinds from "@/lib/science/germination/kinds-of-crops.json";
import { publishedTolerance } from "@/lib/science/germination/published-tolerance";
import { vegetableMinimum } from "@/lib/science/germination/vegetable-minimum";
import { usualSeedsPerGram } from "@/lib/science/seed-weight/usual-seeds-per-gram";

const hundreds = (...normals: number[]) => publishedTolerance(normals.map((normal) => ({ sown: 100, normal })));

describe("the published range of replicates (7 CFR 201.55)", () => {
  it.each([
    ["98, 85, 92, 90", [98, 85, 92, 90], 91, 13, 11, true],
    ["94, 88, 92, 90", [94, 88, 92, 90], 91, 6, 11, false],
    ["an average of 90", [90, 90, 90, 90], 90, 0, 12, false],
    ["an average of 99", [99, 99, 99, 99], 99, 0, 5, false],
    ["an average of 84, where the formula says 14.6", [84, 84, 84, 84], 84, 0, 14, false],
    ["an average of 16, by the low column", [16, 16, 16, 16], 16, 0, 14, false],
    ["two replicates of 90", [95, 85], 90, 10, 9, true],
  ] as const)("%s", (_, normals, roundedPercent, rangePercent, toleratedPercent, exceeded) => {
    expect(hundreds(...normals)).toMatchObject({ roundedPercent, rangePercent, toleratedPercent, exceeded });
  });

  it("the same as tolerated does not exceed it", () => {
    expect(hundreds(96, 85, 92, 91)).toMatchObject({ roundedPercent: 91, rangePercent: 11, exceeded: false });
  });

  it("the mean is rounded first, a half upward", () => {
    expect(hundreds(91, 92)).toMatchObject({ averagePercent: 91.5, roundedPercent: 92 });
  });

  it("says nothing where the table does not: all germinated, blanks, other plans", () => {
    expect(hundreds(100, 100, 100, 100)).toMatchObject({ toleratedPercent: null, exceeded: null });
    expect(hundreds(99, 99)).toMatchObject({ toleratedPercent: null, exceeded: null });
    expect(hundreds(90, 90, 90)).toBeNull();
    expect(
      publishedTolerance([
        { sown: 50, normal: 45 },
        { sown: 100, normal: 90 },
      ]),
    ).toBeNull();
  });
});

describe("tables by crop", () => {
  it("minima are shares: tomato 0.75, cucumber 0.80, okra 0.50 (7 CFR 201.31)", () => {
    expect(["tomato", "cucumber", "okra"].map((key) => vegetableMinimum(key)?.minimum)).toEqual([0.75, 0.8, 0.5]);
    expect(vegetableMinimum("wheat-bread")).toBeNull();
  });

  it("tomato is counted on days 5 and 14 at 20-30, lettuce on day 7 alone (7 CFR 201.58)", () => {
    expect(germinationConditions("tomato")).toMatchObject({
      substrata: ["B", "P", "RB", "T"],
      temperatureC: "20-30",
      firstCountDay: 5,
      finalCountDay: 14,
      hardSeedPossible: false,
    });
    expect(germinationConditions("parsley")).toMatchObject({ firstCountDay: 11, finalCountDay: 28 });
    expect(germinationConditions("lettuce")).toMatchObject({ firstCountDay: null, finalCountDay: 7 });
    expect(germinationConditions("garlic")).toBeNull();
  });

  it("common bean has about 4 seeds a gram, lentil 14 to 23 (7 CFR 201.46)", () => {
    expect(usualSeedsPerGram("bean-common")).toMatchObject({ low: 4, high: 4 });
    expect(usualSeedsPerGram("lentil")).toMatchObject({ low: 14, high: 23 });
    expect(usualSeedsPerGram("bean-broad")).toBeNull();
  });

  it("every crop joined to a kind stands in the crop list, and its kind in a table", () => {
    const keys = new Set((crops as { key: string }[]).map(({ key }) => key));
    for (const key of Object.keys(kinds)) {
      expect(keys, key).toContain(key);
      expect(kindOfCrop(key)).toBeDefined();
      expect(germinationConditions(key), key).not.toBeNull();
    }
  });
});

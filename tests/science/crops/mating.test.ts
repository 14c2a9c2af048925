import { describe, expect, it } from "vitest";
import { cropList, emptyProfile } from "@/lib/science/crops/crop-profile";
import { crossingPairs } from "@/lib/science/crops/crossing-pairs";
import {
  clonal,
  defaultSelfingRate,
  equilibriumInbreeding,
  selfIncompatible,
  separateSexes,
} from "@/lib/science/crops/mating";

const crop = (key: string) => cropList().find((each) => each.key === key) ?? emptyProfile(key);

describe("the selfing rate to assume", () => {
  // by hand from the list: lettuce 1 to 5 % outcrossing, s = 1 - 6/200; broad bean 20 to 60 % or as listed
  it("is one less the middle of the outcrossing span for a selfing crop", () => {
    const lettuce = crop("lettuce");
    expect(lettuce.matingSystem).toBe("selfing");
    const middle = ((lettuce.outcrossingPctMin ?? 0) + (lettuce.outcrossingPctMax ?? 0)) / 2;
    expect(defaultSelfingRate(lettuce)).toBeCloseTo(1 - middle / 100, 12);
  });

  it("is 0.6 for a mixed crop of 20 to 60 % outcrossing, worked by hand", () => {
    expect(
      defaultSelfingRate({
        matingSystem: "mixed",
        selfIncompatible: "no",
        outcrossingPctMin: 20,
        outcrossingPctMax: 60,
      }),
    ).toBeCloseTo(0.6, 12);
  });

  it("is 0 for outcrossing, dioecious, self-incompatible and undescribed crops", () => {
    const rates = [crop("maize-field"), crop("spinach"), crop("kale"), emptyProfile("hedge-foot vetch")].map(
      defaultSelfingRate,
    );
    expect(rates).toEqual([0, 0, 0, 0]);
    expect(
      defaultSelfingRate({
        matingSystem: "mixed",
        selfIncompatible: "yes",
        outcrossingPctMin: 20,
        outcrossingPctMax: 60,
      }),
    ).toBe(0);
  });

  it("is 0 where the outcrossing span is not known", () => {
    expect(
      defaultSelfingRate({
        matingSystem: "mixed",
        selfIncompatible: null,
        outcrossingPctMin: null,
        outcrossingPctMax: 60,
      }),
    ).toBe(0);
  });
});

describe("mating", () => {
  it("has separate sexes in spinach and not in maize", () => {
    expect([separateSexes(crop("spinach")), separateSexes(crop("maize-field"))]).toEqual([true, false]);
  });

  it("takes only a plain yes as self-incompatible: rye yes, a partial one no", () => {
    expect(selfIncompatible(crop("rye"))).toBe(true);
    expect(
      selfIncompatible({
        matingSystem: "outcrossing",
        selfIncompatible: "partial",
        outcrossingPctMin: 50,
        outcrossingPctMax: 90,
      }),
    ).toBe(false);
    expect(selfIncompatible(crop("spinach"))).toBe(false);
  });

  it("is clonal in garlic", () => {
    expect([clonal(crop("garlic")), clonal(crop("leek"))]).toEqual([true, false]);
  });
});

describe("inbreeding at selfing equilibrium", () => {
  // Pollak 1987: F = s/(2 - s); s = 0.8 gives 2/3
  it("is 2/3 at four fifths selfing, 0 and 1 at the ends", () => {
    expect(equilibriumInbreeding(0.8)).toBeCloseTo(2 / 3, 12);
    expect([equilibriumInbreeding(0), equilibriumInbreeding(1)]).toEqual([0, 1]);
  });
});

describe("the crop list", () => {
  it("names each crop once and gives every one a floor of plants and a seed life", () => {
    const keys = cropList().map((each) => each.key);
    expect(new Set(keys).size).toBe(104);
    expect(cropList().filter((each) => !each.plantsMin || !each.seedLifeYearsMin)).toEqual([]);
  });

  it("speaks in its crossing pairs only of crops that it has", () => {
    const keys = new Set(cropList().map((each) => each.key));
    const unknown = crossingPairs()
      .flatMap((pair) => [...pair.cropKeysA, ...pair.cropKeysB])
      .filter((key) => !keys.has(key));
    expect(unknown).toEqual([]);
  });
});

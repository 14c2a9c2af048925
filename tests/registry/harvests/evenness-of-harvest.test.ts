import { describe, expect, it } from "vitest";
import { evennessOf } from "@/lib/registry/harvests/evenness-of-harvest";
import { type PlotOfHarvest, sizeOfHarvest } from "@/lib/registry/harvests/size-of-harvest";
import expected from "./expected-sizes.json";

const crosser = { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 90, outcrossingPctMax: 100 };

const plot = (more: Partial<PlotOfHarvest> = {}): PlotOfHarvest => ({
  plantsStanding: 60,
  malesStanding: null,
  roguedBeforePollen: 0,
  detasselled: null,
  selfingRate: 0,
  mating: crosser,
  inbreeding: 0,
  ...more,
});

const heavy = [9, 92, 8, 61, 40, 12, 7, 6, 6, 5, 4, 3, 2, 2];

describe("the evenness of a harvest", () => {
  it("shows the greedy mother and what equal shares would have kept", () => {
    const even = evennessOf(heavy, plot());
    expect(even?.heaviestShare).toBeCloseTo(expected["greedy, three heaviest"], 10);
    expect(even?.countsAs).toBeCloseTo(expected["greedy, seed parents count as"], 10);
    expect(even?.asGiven?.effectiveSize).toBeCloseTo(expected.greedy, 9);
    expect(even?.ifEqual?.effectiveSize).toBeCloseTo(expected["greedy, equal shares"], 9);
    expect(even?.asGiven?.assumed.map(({ code }) => code)).toEqual(["pollen-shares-equal"]);
  });

  it("knows plants that cannot self, inbred parents, and seed of the plants' own pollen", () => {
    const size = (more: Partial<PlotOfHarvest>) => evennessOf(heavy, plot(more))?.asGiven?.effectiveSize;
    const alone = { ...crosser, selfIncompatible: "yes" };
    expect(size({ mating: alone })).toBeCloseTo(expected["greedy, no selfing possible"], 9);
    expect(size({ inbreeding: 0.125 })).toBeCloseTo(expected["greedy, parents inbred"], 9);
    expect(size({ selfingRate: 0.9 })).toBeCloseTo(expected["greedy, mostly selfed"], 9);
  });

  it("says how much can be taken of each in equal shares", () => {
    // 2 g of 14 are 28; without the two smallest 3 of 12 are 36; ... 6 of the eight that hold 6 or more are 54; 12 of 4 are 48, too few
    expect(evennessOf(heavy, plot())?.takings.map(({ bags, each, total }) => [bags, each, total])).toEqual([
      [14, 2, 28],
      [12, 3, 36],
      [11, 4, 44],
      [10, 5, 50],
      [9, 6, 54],
      [3, 40, 120],
      [2, 61, 122],
    ]);
  });

  it("has no size where the plants that shed pollen are not counted, and none for a single bag", () => {
    expect(evennessOf(heavy, plot({ plantsStanding: null }))).toMatchObject({ asGiven: null, ifEqual: null });
    expect(evennessOf([4], plot())).toBeNull();
    expect(evennessOf([4, 0], plot())).toBeNull();
    expect(evennessOf([4, 2, 1], plot())?.heaviestShare).toBeNull();
  });
});

describe("tassels taken", () => {
  const size = (
    shares: "equal" | number[],
    seedParents: number,
    detasselled: number | null,
    more: Partial<PlotOfHarvest>,
  ) => sizeOfHarvest(plot({ plantsStanding: 50, ...more }), { seedParents, shares, detasselled });

  it("leave rows that only give seed", () => {
    const rows = size("equal", 20, 20, { detasselled: 20 });
    expect(rows?.effectiveSize).toBeCloseTo(expected["rows that only give seed"], 9);
  });

  it("of some plants, seed parents or others", () => {
    const some = size("equal", 20, 8, { detasselled: 12 });
    expect(some?.effectiveSize).toBeCloseTo(expected["some of the seed parents"], 9);
    expect(some?.parents).toMatchObject({ pollenParents: 46, seedParents: 20 });
    const others = size("equal", 20, 0, { detasselled: 10 });
    expect(others?.effectiveSize).toBeCloseTo(expected["only others"], 9);
    const alone = size("equal", 20, 8, { detasselled: 12, mating: { ...crosser, selfIncompatible: "yes" } });
    expect(alone?.effectiveSize).toBeCloseTo(expected["no selfing possible"], 9);
  });

  it("are read with caution where nobody said whose: the heaviest seed parents kept theirs", () => {
    const read = size([10, 40, 20, 30], 4, 2, { plantsStanding: 10, detasselled: 3 });
    expect(read?.effectiveSize).toBeCloseTo(expected["heaviest kept theirs"], 9);
    expect(expected["heaviest kept theirs"]).toBeLessThan(expected["lightest kept theirs"]);
    expect(read?.assumed.map(({ code }) => code)).toContain("heaviest-kept-tassels");
  });

  it("are read with caution where only one of the two numbers is known", () => {
    // of 50 plants 12 were without and 20 gave seed: all 12 may be among the other 30
    const none = size("equal", 20, null, { detasselled: 12 });
    expect(none?.assumed.map(({ code }) => code)).toContain("fewest-seed-parents-detasselled");
    expect(none?.parents).toMatchObject({ pollenParents: 38 });
    // 35 without: 5 at least are seed parents
    expect(size("equal", 20, null, { detasselled: 35 })?.parents).toMatchObject({ pollenParents: 20 });
    const only = size("equal", 20, 8, {});
    expect(only?.assumed.map(({ code }) => code)).toContain("only-seed-parents-detasselled");
    expect(only?.parents).toMatchObject({ pollenParents: 50 });
  });

  it("that cannot be leave no figure", () => {
    expect(size("equal", 20, 25, { detasselled: 25 })).toBeNull();
    expect(size("equal", 20, 0, { detasselled: 40 })).toBeNull();
    expect(size("equal", 50, 50, { detasselled: 50 })).toBeNull();
  });
});

describe("the spread that a pool of counted harvests is stored as", () => {
  it("gives the size of its plants", () => {
    // mean 110/14, mean square deviation (10·(9 − m)² + 4·(5 − m)²)/14
    const shares = [...new Array<number>(10).fill(9), ...new Array<number>(4).fill(5)];
    const mean = 110 / 14;
    const cv = Math.sqrt((10 * (9 - mean) ** 2 + 4 * (5 - mean) ** 2) / 14) / mean;
    for (const told of [shares, { cv }]) {
      const size = sizeOfHarvest(plot({ plantsStanding: 40 }), { seedParents: 14, shares: told, detasselled: null });
      expect(size?.effectiveSize).toBeCloseTo(expected["two harvests of the same plants"], 9);
    }
    const other = sizeOfHarvest(plot({ plantsStanding: 40 }), {
      seedParents: 30,
      shares: { cv: Math.SQRT1_2 / 2 },
      detasselled: null,
    });
    expect(other?.effectiveSize).toBeCloseTo(expected["a notebook's and another"], 9);
  });
});

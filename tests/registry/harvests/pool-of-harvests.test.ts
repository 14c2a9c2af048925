import { describe, expect, it } from "vitest";
import type { HarvestOfGrowOut } from "@/lib/registry/harvests/harvest";
import { poolOfHarvests } from "@/lib/registry/harvests/pool-of-harvests";
import { sharesOfHarvest, storedShares } from "@/lib/registry/harvests/shares-of-harvest";

const of = (more: Partial<HarvestOfGrowOut> = {}): HarvestOfGrowOut => ({
  id: "h",
  bulked: "all together",
  seedParents: null,
  detasselled: null,
  grams: null,
  seeds: null,
  parents: [],
  ...more,
});

const plants = (given: Readonly<Record<string, number | null>>, more: Partial<HarvestOfGrowOut> = {}) =>
  of({
    seedParents: Object.keys(given).length,
    parents: Object.entries(given).map(([plantId, grams]) => ({
      plantId,
      grams,
      seeds: null,
      share: null,
      lost: null,
    })),
    ...more,
  });

const counted = (seedParents: number, more: Partial<HarvestOfGrowOut> = {}) =>
  of({ seedParents, bulked: "equal seeds", ...more });

// Every number below was worked out by hand.
describe("the pool of a grow-out's harvests", () => {
  it("is none where nobody counted seed parents", () => {
    expect(poolOfHarvests([])).toBeNull();
    expect(poolOfHarvests([of()])).toBeNull();
  });

  it("is the harvest itself where there is one", () => {
    expect(poolOfHarvests([counted(14)])).toMatchObject({ seedParents: 14, seedParentsAtMost: 14, shares: "equal" });
    expect(poolOfHarvests([plants({ a: 3, b: 1 })])).toMatchObject({ seedParents: 2, shares: [3, 1] });
  });

  it("counts a known plant once and adds what it gave", () => {
    const pool = poolOfHarvests([plants({ a: 3, b: 1 }), plants({ b: 5, c: 2 })]);
    expect(pool).toMatchObject({ seedParents: 3, seedParentsAtMost: 3, shares: [3, 6, 2] });
    expect(pool?.gramsOfPlants).toEqual(
      new Map([
        ["a", 3],
        ["b", 6],
        ["c", 2],
      ]),
    );
  });

  it("shares the seed of equal parts out by the plants", () => {
    // 10 g from a and b, 5 g each; 9 g from b, c and d, 3 g each: 5, 8, 3, 3
    const pool = poolOfHarvests([
      plants({ a: 9, b: 7 }, { bulked: "equal weight", grams: 10 }),
      plants({ b: null, c: null, d: null }, { bulked: "equal seeds", grams: 9 }),
    ]);
    expect(pool).toMatchObject({ seedParents: 4, shares: [8, 5, 3, 3], gramsOfPlants: null });
  });

  it("takes plants that were only counted for the same ones", () => {
    // 14 plants gave 70 g, 5 g each; 10 gave 40 g, 4 g each
    const pool = poolOfHarvests([counted(14, { grams: 70 }), counted(10, { grams: 40 })]);
    expect(pool).toMatchObject({ seedParents: 14, seedParentsAtMost: 24 });
    expect(pool?.shares).toEqual([...new Array(10).fill(9), ...new Array(4).fill(5)]);
  });

  it("takes counted plants for the heaviest of those that are known", () => {
    const pool = poolOfHarvests([plants({ a: 1, b: 6, c: 3 }), counted(2, { grams: 8 })]);
    expect(pool).toMatchObject({ seedParents: 3, seedParentsAtMost: 5, shares: [10, 7, 1] });
    expect(pool?.plants).toEqual(new Set(["a", "b", "c"]));
  });

  it("knows no shares where an amount is missing, unless all gave alike", () => {
    expect(poolOfHarvests([counted(14), counted(10, { grams: 40 })])?.shares).toBeNull();
    expect(poolOfHarvests([counted(14), counted(14)])?.shares).toBe("equal");
    expect(poolOfHarvests([plants({ a: 1, b: null }), plants({ a: 2, b: 2 })])?.shares).toBeNull();
  });

  it("counts at least so many seed parents without tassels", () => {
    const rows = (...given: [number, number | null][]) =>
      poolOfHarvests(given.map(([seedParents, detasselled]) => counted(seedParents, { detasselled })))?.detasselled;
    expect(rows([20, null], [10, null])).toBeNull();
    expect(rows([20, 8], [10, 10])).toBe(10);
    // none of either kept its tassel: all 20 were without
    expect(rows([20, 20], [10, 10])).toBe(20);
    // of 20, at most 2 + 3 kept theirs
    expect(rows([20, 18], [10, 7])).toBe(18);
    expect(rows([20, 8], [10, null])).toBe(8);
  });
});

describe("the shares of a harvest", () => {
  it("are what each gave, unless equal parts were taken", () => {
    expect(sharesOfHarvest(plants({ a: 9, b: 1 }))).toEqual([9, 1]);
    expect(sharesOfHarvest(plants({ a: 9, b: 1 }, { bulked: "equal weight" }))).toBe("equal");
    expect(sharesOfHarvest(plants({ a: 4, b: 4 }))).toBe("equal");
    expect(sharesOfHarvest(plants({ a: null }))).toBe("equal");
    expect(sharesOfHarvest(plants({ a: 4, b: null }))).toBeNull();
    expect(sharesOfHarvest(of({ seedParents: 3 }))).toBeNull();
  });

  it("are stored as parts of one, the lost ones without", () => {
    const lost = { plantId: "c", grams: 5, seeds: null, share: null, lost: "eaten" };
    const both = plants({ a: 3, b: 1 });
    expect(storedShares({ ...both, parents: [lost, ...both.parents] })).toEqual([null, 0.75, 0.25]);
    // two of four bags were weighed, and equal parts taken of all four
    const some = plants({ a: 3, b: 1 }, { bulked: "equal weight", seedParents: 4 });
    expect(storedShares(some)).toEqual([0.25, 0.25]);
  });
});

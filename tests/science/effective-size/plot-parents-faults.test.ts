import { expect, it } from "vitest";
import { plotParentsFaults } from "@/lib/science/effective-size/plot-parents-faults";

it("sound parents have no fault, whatever shares they gave", () => {
  expect(
    plotParentsFaults({ pollenParents: 3, seedParents: 2, seedShares: [0, 4], pollenShares: { cv: 1.2 } }),
  ).toEqual([]);
  expect(plotParentsFaults({ pollenParents: 2, seedParents: 9, sexes: "separate", selfingRate: 0 })).toEqual([]);
});

it("faults lie under the place that the caller names", () => {
  const faults = plotParentsFaults({ pollenParents: 3, seedParents: 4, seedShares: { cv: -1 } }, ["lots", 5]);
  expect(faults.map(({ path }) => path)).toEqual([
    ["lots", 5, "seedParents"],
    ["lots", 5, "seedShares", "cv"],
  ]);
});

it("a list of 200,000 shares is read without choking", () => {
  const shares = new Array<number>(200_000).fill(-1);
  expect(plotParentsFaults({ pollenParents: 200_000, seedParents: 1, pollenShares: shares })).toHaveLength(200_000);
});

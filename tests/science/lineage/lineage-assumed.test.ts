import { expect, it } from "vitest";
import { assumedOfLot, lineageAssumed } from "@/lib/science/lineage/lineage-assumed";
import type { LineageLot } from "@/lib/science/lineage/lots";

const grown = (id: string): LineageLot => ({
  id,
  kind: "grow-out",
  parents: [{ id: "A", share: 1 }],
  pollenParents: 9,
  seedParents: 3,
  seedShares: "equal",
  pollenShares: "equal",
  selfingRate: 0,
});

it("blends and splits assume nothing", () => {
  expect(assumedOfLot({ id: "M", kind: "blend", parents: [{ id: "A", share: 1 }] })).toEqual([]);
  expect(assumedOfLot({ id: "S", kind: "split", parents: [{ id: "A", share: 1 }] })).toEqual([]);
});

it("foreign pollen that was not assessed is said to be so, except where no pollen but its own can matter", () => {
  expect(assumedOfLot(grown("B")).map(({ code }) => code)).toEqual(["foreign-pollen-not-assessed"]);
  expect(assumedOfLot({ ...grown("B"), selfingRate: 1 } as LineageLot)).toEqual([]);
});

it("of many lots the first five are named and the rest counted", () => {
  const [only] = lineageAssumed(["B", "C", "D", "E", "F", "G", "H"].map(grown));
  expect(only?.text).toBe("foreign pollen was not assessed and is computed as 0: B, C, D, E, F and 2 more");
});

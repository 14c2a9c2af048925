import { describe, expect, it } from "vitest";
import { forOrder, knownLotFaults, nothingBounds } from "@/lib/science/lineage/known-lot-faults";

const lot = { id: "A", kind: "grow-out" as const, parents: [{ id: "F", share: 1 }] };
const counted = { ...lot, pollenParents: 20, seedParents: 10, seedShares: "equal" as const };
const at = ["lots", 1];

describe("a grow-out as far as it is known", () => {
  it("is sound counted, in bounds, or with nothing that bounds it", () => {
    expect(knownLotFaults(counted, at)).toEqual([]);
    expect(knownLotFaults({ ...counted, pollenParents: { low: 10, high: 40 } }, at)).toEqual([]);
    expect(knownLotFaults(lot, at)).toEqual([]);
    expect(nothingBounds(lot)).toBe(true);
    expect(nothingBounds(counted)).toBe(false);
  });

  it("is refused with bounds that cross, at the upper one", () => {
    const [fault, ...more] = knownLotFaults({ ...counted, selfingRate: { low: 0.5, high: 0.2 } }, at);
    expect(more).toEqual([]);
    expect(fault).toMatchObject({ code: "bounds-crossed", path: ["lots", 1, "selfingRate", "high"] });
  });

  it("is refused with a share of foreign pollen above 1", () => {
    const faults = knownLotFaults({ ...counted, foreignPollen: 1.5 }, at);
    expect(faults.map(({ path }) => path)).toEqual([["lots", 1, "foreignPollen"]]);
  });

  it("is refused where it says how plants shared that were not counted", () => {
    const faults = knownLotFaults({ ...counted, seedShares: "unknown", pollenShares: { cv: 0.5 } }, at);
    expect(faults.map(({ code }) => code)).toEqual(["pollen-shares-of-uncounted"]);
  });
});

// By hand: of three parts one is told as a half; the other two take a quarter each.
it("stands in for its order with parts that take what is left, evenly", () => {
  const parents = [{ id: "F", share: 0.5 }, { id: "G" }, { id: "H" }];
  expect(forOrder({ ...lot, parents })).toEqual({
    id: "A",
    kind: "blend",
    parents: [
      { id: "F", share: 0.5 },
      { id: "G", share: 0.25 },
      { id: "H", share: 0.25 },
    ],
  });
});

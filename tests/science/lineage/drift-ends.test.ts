import { describe, expect, it } from "vitest";
import { boundsOf, driftEnds, plantsKnown, rateEnds } from "@/lib/science/lineage/drift-ends";

const lot = { id: "A", kind: "grow-out" as const, parents: [{ id: "F", share: 1 }] };
const even = { seedShares: "equal" as const, seedParents: 10 };

describe("what a grow-out does to its parents' genes", () => {
  // By hand: ten plants, all kept alike: P_MM = P_MF = P_FF = 1/10, κ = ¼(0.1 + 2·0.1 + 0.1) = 0.1, α = P_MF = 0.1.
  it("is one value where all is known", () => {
    const ends = driftEnds({ ...lot, ...even, pollenParents: 10 });
    for (const end of ["low", "high"] as const) {
      expect(ends.passing[end]).toBe(1);
      expect(ends.fromOnePlant[end]).toBeCloseTo(0.1, 12);
      expect(ends.insideOnePlant[end]).toBeCloseTo(0.1, 12);
    }
  });

  // By hand: with forty that shed pollen P_FF = P_MF = 1/40, κ = ¼(0.1 + 2·0.025 + 0.025) = 0.04375; with ten 0.1 as above.
  it("runs from the most to the fewest pollen parents", () => {
    const ends = driftEnds({ ...lot, ...even, pollenParents: { low: 10, high: 40 } });
    expect(ends.fromOnePlant.low).toBeCloseTo(0.04375, 12);
    expect(ends.fromOnePlant.high).toBeCloseTo(0.1, 12);
    expect(ends.insideOnePlant.low).toBeCloseTo(0.025, 12);
    expect(ends.insideOnePlant.high).toBeCloseTo(0.1, 12);
  });

  // By hand: m = 0.2 leaves a = 1 − 0.2/2 = 0.9 of the genes; at s = 1 all are the parents'.
  it("lets less of the parents' genes through with foreign pollen, the less the more it selfs", () => {
    const ends = driftEnds({
      ...lot,
      ...even,
      pollenParents: 10,
      foreignPollen: 0.2,
      selfingRate: { low: 0, high: 1 },
    });
    expect(ends.passing.low).toBeCloseTo(0.9, 12);
    expect(ends.passing.high).toBe(1);
  });
});

it("reads a number or a rate as bounds, and knows when all was counted", () => {
  expect(boundsOf(undefined)).toEqual({ low: 1, high: null });
  expect(boundsOf(12)).toEqual({ low: 12, high: 12 });
  expect(rateEnds(undefined)).toEqual({ low: 0, high: 0 });
  expect(rateEnds({ low: 0.1, high: 0.3 })).toEqual({ low: 0.1, high: 0.3 });
  expect(plantsKnown({ ...lot, ...even, pollenParents: 10 })).toBe(true);
  expect(plantsKnown({ ...lot, ...even, pollenParents: { low: 10, high: 40 } })).toBe(false);
  expect(plantsKnown({ ...lot, pollenParents: 10, seedParents: 10, seedShares: "unknown" })).toBe(false);
});

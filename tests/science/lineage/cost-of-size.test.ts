import { describe, expect, it } from "vitest";
import { ancestryOf } from "@/lib/science/lineage/ancestry-of";
import { costsOfSize } from "@/lib/science/lineage/cost-of-size";
import type { GrowOutLot, LineageLot } from "@/lib/science/lineage/lots";
import { answered, pathsOf } from "../agreement";

const grown = (id: string, from: string, pollenParents: number, seedParents: number, more: Partial<GrowOutLot> = {}) =>
  ({ id, kind: "grow-out", parents: [{ id: from, share: 1 }], pollenParents, seedParents, ...more }) as LineageLot;

/** 10 plants with seed of 4, then 20, then 8 with seed of 5: by hand θ 0.06875, 0.0915625, 0.15685644531249998. */
const chain: LineageLot[] = [
  { id: "A", kind: "founder" },
  grown("B", "A", 10, 4),
  grown("C", "B", 20, 20),
  grown("D", "C", 8, 5),
  grown("E", "C", 100, 100),
];

describe("what a grow-out's size cost", () => {
  it("is what would be kept with other plants in it alone, less what is kept", () => {
    const { today, costs } = answered(
      costsOfSize(chain, "D", [
        { id: "B", pollenParents: 10, seedParents: 10 },
        { id: "D", pollenParents: 8, seedParents: 8 },
      ]),
    );
    expect(today.coancestry).toBeCloseTo(0.15685644531249998, 12);
    // by hand: θ_B 1/20, F_B 1/20; θ_C = 0.05 + 0.05·(0.525 − 0.05) = 0.07375 = F_C; θ_D = 0.07375 + 0.14375·(0.536875 − 0.07375)
    expect(costs[0]?.diversityRetained).toBeCloseTo(1 - 0.14032421875, 12);
    expect(costs[0]?.cost).toBeCloseTo(0.15685644531249998 - 0.14032421875, 12);
    // by hand: θ_D = 0.0915625 + (1/8)·(0.54578125 − 0.0915625)
    expect(costs[1]?.cost).toBeCloseTo(0.15685644531249998 - 0.14833984375, 12);
  });

  it("is nothing at the size that it had, and below nothing where it was larger than planned", () => {
    const { costs } = answered(
      costsOfSize(chain, "D", [
        { id: "C", pollenParents: 20, seedParents: 20 },
        { id: "C", pollenParents: 5, seedParents: 5 },
      ]),
    );
    expect(costs[0]?.cost).toBe(0);
    expect(costs[1]?.cost).toBeLessThan(0);
  });

  it("is told of the native genes where foreign pollen came in", () => {
    const foreign = chain.map((lot) => (lot.id === "C" ? ({ ...lot, foreignPollen: 0.2 } as LineageLot) : lot));
    const [cost] = answered(costsOfSize(foreign, "D", [{ id: "B", pollenParents: 50, seedParents: 50 }])).costs;
    expect(cost?.nativeCost).toBeGreaterThan(cost?.cost ?? 1);
  });

  it("is refused for a lot or grow-out that is not in the lineage, and for plants that cannot be", () => {
    expect(pathsOf(costsOfSize(chain, "Z", []))).toEqual([["lot"]]);
    // E is no ancestor of D, and a founder is no grow-out
    expect(pathsOf(costsOfSize(chain, "D", [{ id: "E", pollenParents: 9, seedParents: 9 }]))).toEqual([
      ["others", 0, "id"],
    ]);
    expect(pathsOf(costsOfSize(chain, "D", [{ id: "A", pollenParents: 9, seedParents: 9 }]))).toEqual([
      ["others", 0, "id"],
    ]);
    expect(costsOfSize(chain, "D", [{ id: "B", pollenParents: 4, seedParents: 9 }]).ok).toBe(false);
  });
});

it("an ancestry is the lots named and all that they come from, in the order given", () => {
  expect(ancestryOf(chain, ["D"]).map(({ id }) => id)).toEqual(["A", "B", "C", "D"]);
  expect(ancestryOf(chain, ["B", "nothing"]).map(({ id }) => id)).toEqual(["A", "B"]);
});

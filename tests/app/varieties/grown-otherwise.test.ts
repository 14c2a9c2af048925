import { describe, expect, it } from "vitest";
import { chanceOf } from "@/app/varieties/[id]/grown-otherwise/_plan/chance-of-plan";
import {
  addressOfGrowOut,
  addressOfPlan,
  planOfAddress,
} from "@/app/varieties/[id]/grown-otherwise/_plan/plan-of-address";
import { readPlan, reckonPlan } from "@/app/varieties/[id]/grown-otherwise/_plan/reckon-plan";
import { leftInWords, shareOfWhat } from "@/app/varieties/[id]/grown-otherwise/_words/plan-words";
import type { GroundToGrowOn, LotToGrowOn } from "@/lib/registry/varieties/read-grown-otherwise";
import { answered as granted } from "../../science/agreement";

const lot = (id: string, more: Partial<LotToGrowOn> = {}): LotToGrowOn => ({
  ...{ id, node: `lot ${id}`, number: `Rai ${id}`, year: "2020", holder: null, grams: 100 },
  ...{ standing: "counted", foreign: false, founders: ["Rai 1"], between: null, objections: [] },
  ...more,
});

const grown = (id: string) => ({
  id: `lot ${id}`,
  kind: "grow-out" as const,
  parents: [{ id: "lot 1", share: 1 }],
  pollenParents: 10,
  seedParents: 10,
});

const ground: GroundToGrowOn = {
  variety: { id: "v", name: "Rain Flint", seedCoat: null },
  crop: { key: "maize-field", commonName: "Maize", clonal: false, matingSystem: "outcrossing" },
  lots: [lot("2"), lot("3"), lot("4", { standing: "plants not known" })],
  lineage: [{ id: "lot 1", kind: "founder", inbreeding: 0, coancestry: 0 }, grown("2"), grown("3")],
  known: null,
  mating: { sexes: "hermaphrodite", selfingRate: 0, selfIncompatible: false },
  usualInbreeding: 0,
  today: { lots: ["2"], size: { plants: 20, pollenParents: 20, seedParents: 20, from: "variety" }, growOut: null },
};

describe("a plan that is tried out", () => {
  it("is today's where the address says nothing, and the address brings it back", () => {
    const today = planOfAddress({}, ground);
    expect(today).toMatchObject({ lots: ["2"], plants: "20", seedParents: "20", every: "3", cv: "0" });
    const tried = { ...today, lots: ["2", "3"], shares: { "2": "30", "3": "70" }, plants: "60", cv: "1", every: "5" };
    const address = new URLSearchParams(addressOfPlan(tried));
    const back = Object.fromEntries([...new Set(address.keys())].map((key) => [key, address.getAll(key)]));
    expect(planOfAddress(back, ground)).toEqual(tried);
    expect(planOfAddress({ lots: "2,99", plants: "8" }, ground).lots).toEqual(["2"]);
    expect(addressOfGrowOut("v", tried)).toBe(
      "/grow-outs/new?variety=v&lot=2&lot=3&share=30&share=70&plants=60&seedParents=20",
    );
  });

  it("leaves what the lineage leaves (by hand: one lot of ten plants, then ten grow-outs of twenty)", () => {
    const { left, steps, fromNow } = granted(reckonPlan(planOfAddress({}, ground), ground));
    expect(fromNow).toBe(false);
    expect(steps).toHaveLength(11);
    expect(left?.low).toBeCloseTo(0.95 * 0.975 ** 10, 12);
    expect(left?.high).toBe(left?.low);
  });

  it("of two lots that share nothing but their founder begins higher", () => {
    const both = planOfAddress({ lots: ["2", "3"], plants: "20", seedParents: "20", every: "3" }, ground);
    const found = granted(reckonPlan(both, ground));
    expect(found.evenShares).toBe(true);
    expect(found.steps[0]?.left?.low).toBeCloseTo(0.975, 12);
  });

  it("is measured from the seed of today where the lineage of a lot is not known", () => {
    const plan = planOfAddress({ lots: "4", plants: "20", seedParents: "20", every: "3" }, ground);
    const found = granted(reckonPlan(plan, ground));
    expect(found.fromNow).toBe(true);
    expect(found.left?.low).toBeCloseTo(0.975 ** 10, 12);
  });

  it("lies between two ends where the line of its seed does, and is told of the cautious one first; by hand of 10 to 60 plants, then twice 20", () => {
    const between = { since: [], assumed: ["how the seed was shared"] };
    const known = {
      lots: [ground.lineage[0], { ...grown("4"), pollenParents: { low: 10, high: 60 }, seedShares: "equal" }],
    } as GroundToGrowOn["known"];
    const lots = [lot("4", { standing: "plants not known", between })];
    const spanned = { ...ground, lots, known };
    const asked = { lots: "4", plants: "20", seedParents: "20", every: "15" };
    const found = granted(reckonPlan(planOfAddress(asked, spanned), spanned));
    expect(found.fromNow).toBe(false);
    // 10 of 10: θ = F = 0.05, then 0.07375, 0.09690625; 10 of 60: by lineage-span's example θ 0.01875
    expect(found.steps[0]?.left?.low).toBeCloseTo(0.95, 12);
    expect(found.left?.low).toBeCloseTo(1 - 0.09690625, 12);
    expect(found.steps[0]?.left?.high).toBeCloseTo(1 - 0.01875, 12);
    expect(leftInWords(found.left)).toBe("90–93\u00a0%");
    expect(shareOfWhat(found)).toBe("of the founders’ diversity");
  });

  it("is refused with its field: no lot, no count, a share that is missing, more seed than pollen parents", () => {
    const fields = (asked: Record<string, string | string[]>) => {
      const read = reckonPlan(planOfAddress({ plants: "20", seedParents: "20", every: "3", ...asked }, ground), ground);
      return read.ok ? [] : read.refusals.map(({ path }) => path[0]);
    };
    expect(fields({ lots: "" })).toEqual(["lots"]);
    expect(fields({ lots: "2", plants: "many", every: "0" })).toEqual(["plants", "every"]);
    expect(fields({ lots: ["2", "3"], "share.2": "40" })).toEqual(["shares"]);
    expect(fields({ lots: ["2", "3"], "share.2": "0", "share.3": "0" })).toEqual(["shares"]);
    expect(fields({ lots: "2", seedParents: "21" })).toContain("seedParents");
    expect(readPlan(planOfAddress({ lots: "2" }, ground), ground).ok).toBe(true);
  });

  it("is dropped through from the seed that is sown: what its seeds share counts as nothing", () => {
    const plan = granted(reckonPlan(planOfAddress({}, ground), ground));
    const { lots, of, replicates } = chanceOf(plan);
    // F = θ = 0.05 in a lot that flowered freely: nothing goes beyond it
    expect(lots[0]).toEqual({ id: "sown now", kind: "founder", inbreeding: 0, coancestry: 0 });
    expect(lots).toHaveLength(11);
    expect(of).toBe("grow-out 10");
    expect(replicates).toBe(2000);
  });
});

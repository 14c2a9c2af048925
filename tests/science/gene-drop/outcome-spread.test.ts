import { describe, expect, it } from "vitest";
import { outcomeSpread } from "@/lib/science/gene-drop/outcome-spread";
import { lineage } from "@/lib/science/lineage/lineage";
import type { GrowOutLot, LineageLot } from "@/lib/science/lineage/lots";
import { answered, pathsOf } from "../agreement";

const founder = (inbreeding: number): LineageLot => ({ id: "A", kind: "founder", inbreeding, coancestry: 0 });
const grown = (id: string, from: string, plants: number, more: Partial<GrowOutLot> = {}): LineageLot => ({
  id,
  kind: "grow-out",
  parents: [{ id: from, share: 1 }],
  pollenParents: plants,
  seedParents: plants,
  ...more,
});
const asked = { of: "B", frequency: 0.05, replicates: 50, seed: 7 };

describe("what chance makes of a plan", () => {
  it("is the same in every run where plants of one founder gave alike (by hand)", () => {
    // four genes of two plants, a quarter each: 1 − 4/16; the form is missed by four draws
    const two = answered(outcomeSpread({ ...asked, lots: [founder(0), grown("B", "A", 2)] }));
    expect(two.retained).toMatchObject({ mean: 0.75, standardError: 0, low: 0.75, median: 0.75, high: 0.75 });
    expect(two.rareKept.probability).toBeCloseTo(1 - 0.95 ** 4, 12);
    // one gene of one inbred plant
    const pure = answered(outcomeSpread({ ...asked, lots: [founder(1), grown("B", "A", 1)] }));
    expect(pure.retained.mean).toBe(0);
    expect(pure.rareKept.probability).toBeCloseTo(0.05, 12);
  });

  it("has the lineage's figure as its mean, and spreads around it", () => {
    const lots = [founder(0), grown("B", "A", 8), grown("C", "B", 6), grown("D", "C", 10, { seedParents: 4 })];
    const theta = answered(lineage({ lots })).lots[3]?.coancestry ?? 0;
    const { retained, rareKept } = answered(outcomeSpread({ ...asked, of: "D", replicates: 3000, lots }));
    expect(Math.abs(retained.mean - (1 - theta))).toBeLessThan(4 * retained.standardError);
    expect(retained.low).toBeLessThan(retained.median);
    expect(retained.median).toBeLessThan(retained.high);
    // sixteen genes at most, one at least
    expect(rareKept.probability).toBeGreaterThan(0.05);
    expect(rareKept.probability).toBeLessThan(1 - 0.95 ** 16);
  });

  it("is the same again from the same number, and tells how many runs are done", () => {
    const lots = [founder(0), grown("B", "A", 5), grown("C", "B", 5)];
    const heard: number[] = [];
    const once = outcomeSpread({ ...asked, of: "C", replicates: 3, lots }, (done) => heard.push(done));
    expect(outcomeSpread({ ...asked, of: "C", replicates: 3, lots })).toEqual(once);
    expect(heard).toEqual([1, 2, 3]);
  });

  it("is refused for a founder, with foreign pollen, without runs, and for more plants than can be grown", () => {
    const lots = [founder(0), grown("B", "A", 5)];
    expect(pathsOf(outcomeSpread({ ...asked, of: "A", lots }))).toEqual([["of"]]);
    const foreign = [founder(0), grown("B", "A", 5, { foreignPollen: 0.1 })];
    expect(pathsOf(outcomeSpread({ ...asked, lots: foreign }))).toEqual([["lots", 1, "foreignPollen"]]);
    expect(pathsOf(outcomeSpread({ ...asked, replicates: 1, frequency: 0, lots }))).toEqual([
      ["replicates"],
      ["frequency"],
    ]);
    const many = [founder(0), grown("B", "A", 1_000_000)];
    expect(pathsOf(outcomeSpread({ ...asked, replicates: 1000, lots: many }))).toEqual([["replicates"]]);
  });
});

import { describe, expect, it } from "vitest";
import type { LineageLot } from "@/lib/science/lineage/lots";
import { grownOn } from "@/lib/science/population/grown-on";
import { publishedAdvice } from "@/lib/science/population/published-advice";
import { answered, pathsOf } from "../agreement";

const founder: LineageLot = { id: "A", kind: "founder" };
const sown = [{ id: "A", share: 1 }];
const twenty = { pollenParents: 20, seedParents: 20, seedShares: "equal" } as const;

describe("a population grown on", () => {
  it("of 20 equal plants every 3 years for 30 keeps 0.975 to the tenth", () => {
    const steps = answered(grownOn({ lots: [founder], parents: sown, plot: twenty, years: 30, yearsBetween: 3 }));
    expect(steps.map(({ year }) => year)).toEqual([null, 0, 3, 6, 9, 12, 15, 18, 21, 24, 27]);
    expect(steps[0]?.figures.diversityRetained).toBe(1);
    expect(steps.at(-1)?.figures.diversityRetained).toBeCloseTo(0.975 ** 10, 12);
  });

  it("of two lots sown together begins with what the two hold together", () => {
    const lots: LineageLot[] = [
      founder,
      { id: "B", kind: "grow-out", parents: sown, pollenParents: 10, seedParents: 10 },
      { id: "C", kind: "grow-out", parents: sown, pollenParents: 10, seedParents: 10 },
      { id: "not asked for", kind: "grow-out", parents: sown, pollenParents: 2, seedParents: 1 },
    ];
    const parents = ["B", "C"].map((id) => ({ id, share: 0.5 }));
    const [seed, first] = answered(grownOn({ lots, parents, plot: twenty, years: 1, yearsBetween: 1 }));
    // by hand: θ = ½·(1/20) = 0.025; F̄ 0.05, S 0.525; then 0.025 + (1/20)·(0.525 − 0.025) = 0.05
    expect(seed?.figures.coancestry).toBeCloseTo(0.025, 12);
    expect(first?.figures.coancestry).toBeCloseTo(0.05, 12);
  });

  it("takes names that the lineage has already", () => {
    const named: LineageLot = { ...founder, id: "step 0" };
    const parents = [{ id: "step 0", share: 1 }];
    expect(answered(grownOn({ lots: [named], parents, plot: twenty, years: 1, yearsBetween: 1 }))).toHaveLength(2);
  });

  it("is refused without years, without parents, with more seed than pollen parents, and without end", () => {
    const input = { lots: [founder], parents: sown, plot: twenty, years: 30, yearsBetween: 3 };
    expect(pathsOf(grownOn({ ...input, years: 0, yearsBetween: -1 }))).toEqual([["years"], ["yearsBetween"]]);
    expect(grownOn({ ...input, parents: [] }).ok).toBe(false);
    expect(grownOn({ ...input, parents: [{ id: "Z", share: 1 }] }).ok).toBe(false);
    expect(grownOn({ ...input, plot: { pollenParents: 3, seedParents: 4 } }).ok).toBe(false);
    expect(pathsOf(grownOn({ ...input, yearsBetween: 0.001 }))).toEqual([["yearsBetween"]]);
  });
});

it("every published number says where it is from and how far that was read", () => {
  for (const { what, advice, source, read } of publishedAdvice) {
    for (const text of [what, advice, source, read]) expect(text).not.toBe("");
    expect(read).toMatch(/abstract|quoted|not verified/);
  }
});

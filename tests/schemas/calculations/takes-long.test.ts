import { describe, expect, it } from "vitest";
import { calculationNamed, calculations } from "@/lib/schemas/calculations";
import { sizes, takesLong } from "@/lib/schemas/calculations/takes-long";

const lots = (plants: number) => [
  { id: "a", kind: "founder" },
  { id: "b", kind: "grow-out", parents: [{ id: "a", share: 1 }], pollenParents: plants, seedParents: 1 },
];

describe("what takes long", () => {
  it("is no calculation with the input of its example", () => {
    expect(calculations.filter(({ name, example }) => takesLong(name, example)).map(({ name }) => name)).toEqual([]);
  });

  it("is told of calculations that there are", () => {
    expect(Object.keys(sizes).filter((name) => !calculationNamed(name))).toEqual([]);
  });

  it("is a simulation of many plants, many times over", () => {
    expect(takesLong("gene-drop", { lots: lots(99), replicates: 200, seed: 1 })).toBe(false);
    expect(takesLong("gene-drop", { lots: lots(99), replicates: 201, seed: 1 })).toBe(true);
  });

  it("is a forecast of many tests, a choice among many scores, a mix of many lots, a large pedigree", () => {
    const many = (count: number) => Array.from({ length: count }, (_, k) => ({ id: `${k}` }));
    expect(takesLong("viability-forecast", { tests: many(21) })).toBe(true);
    expect(takesLong("choose-plants", { plants: many(2000), traits: many(3) })).toBe(true);
    expect(takesLong("choose-plants", { plants: many(1000), traits: many(3) })).toBe(false);
    expect(takesLong("blend-advice", { lots: [], candidates: many(20) })).toBe(false);
    expect(takesLong("blend-advice", { lots: [], candidates: many(20), minShare: 0.1 })).toBe(true);
    expect(takesLong("lineage", { lots: many(1001) })).toBe(true);
  });

  it("is anything with very much text, and never what is malformed", () => {
    expect(takesLong("scorer-agreement", { pairs: Array.from({ length: 60_000 }, () => [1, 2]) })).toBe(true);
    for (const input of [null, undefined, 7, "x", [], { lots: 3, replicates: "many" }])
      expect(takesLong("gene-drop", input)).toBe(false);
  });
});

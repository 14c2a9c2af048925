import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineage } from "@/lib/science/lineage/lineage";
import type { GrowOutLot, LineageInput, LineageLot } from "@/lib/science/lineage/lots";
import { answered, expectAgreement, pathsOf, referenceCases, refusalsOf } from "../agreement";

const founder: LineageLot = { id: "A", kind: "founder" };
const grownFrom = (id: string, parent: string, more: Partial<GrowOutLot> = {}): GrowOutLot => ({
  id,
  kind: "grow-out",
  parents: [{ id: parent, share: 1 }],
  pollenParents: 10,
  seedParents: 5,
  ...more,
});

const blend = (id: string, ...parents: [string, number][]): LineageLot => ({
  id,
  kind: "blend",
  parents: parents.map(([parent, share]) => ({ id: parent, share })),
});

describe("worked lineages", () => {
  for (const { name, input, expected } of referenceCases<LineageInput>("lineage-worked")) {
    it(String(name), () => expectAgreement(answered(lineage(input)), expected));
  }

  it("ten plants five times over: θ 0.217955 where chance selfing is shut out, 0.226219 where not", () => {
    const chain = (more: Partial<GrowOutLot>) =>
      lineage({
        lots: [
          founder,
          ...["B", "C", "D", "E", "F"].map((id, step) =>
            grownFrom(id, "ABCDE"[step] as string, { pollenParents: 10, seedParents: 10, ...more }),
          ),
        ],
      });
    const last = (more: Partial<GrowOutLot>) => answered(chain(more)).lots[5];
    expect(last({ selfIncompatible: true })?.inbreeding).toBeCloseTo(0.17895, 6);
    expect(last({ selfIncompatible: true })?.coancestry).toBeCloseTo(0.217955, 6);
    expect(last({})?.coancestry).toBeCloseTo(0.226219, 6);
    expect(last({})?.inbreeding).toBeCloseTo(0.226219, 6);
  });

  it("a selfing mixture of many plants reaches F 0.4, 0.56, 0.624 at s = 0.8 (closed form)", () => {
    const many = { pollenParents: 1e9, seedParents: 1e9, selfingRate: 0.8 };
    const lots = [founder, grownFrom("B", "A", many), grownFrom("C", "B", many), grownFrom("D", "C", many)];
    const inbreeding = answered(lineage({ lots })).lots.map((lot) => lot.inbreeding);
    [0, 0.4, 0.56, 0.624].forEach((expected, step) => {
      expect(inbreeding[step]).toBeCloseTo(expected, 6);
    });
  });
});

it("agrees with 300 random lineages worked through whole matrices, in any order of the lots", () => {
  for (const { input, expected } of referenceCases<LineageInput>("lineage")) {
    expectAgreement(answered(lineage(input)), expected);
  }
});

describe("what was assumed", () => {
  it("stands once for each default, with the lots it was taken for", () => {
    const { assumed } = answered(lineage({ lots: [founder, grownFrom("B", "A"), grownFrom("C", "B")] }));
    expect(assumed.map(({ code }) => code)).toEqual([
      "founder-not-inbred",
      "founder-seeds-unrelated",
      "seed-shares-equal",
      "pollen-shares-equal",
      "selfing-by-chance-only",
      "foreign-pollen-not-assessed",
    ]);
    expect(assumed[5]?.text).toBe("foreign pollen was not assessed and is computed as 0: B, C");
  });

  it("is empty where everything was stated", () => {
    const stated = { seedShares: "equal", pollenShares: "equal", selfingRate: 0, foreignPollen: 0 } as const;
    const lots: LineageLot[] = [{ ...founder, inbreeding: 0, coancestry: 0 }, grownFrom("B", "A", stated)];
    expect(answered(lineage({ lots })).assumed).toEqual([]);
  });
});

describe("refusals", () => {
  const refusedAt = (lots: LineageLot[], pairs?: [string, string][]) => pathsOf(lineage({ lots, pairs }));

  it.each<[string, LineageLot[], (string | number)[]]>([
    ["a repeated id", [founder, founder], ["lots", 1, "id"]],
    ["an unknown parent", [grownFrom("B", "Z"), founder], ["lots", 0, "parents", 0, "id"]],
    ["a parent named twice", [founder, blend("B", ["A", 0.5], ["A", 0.5])], ["lots", 1, "parents", 1, "id"]],
    ["shares that miss 1", [founder, blend("B", ["A", 0.9])], ["lots", 1, "parents"]],
    ["a blend of nothing", [founder, blend("B")], ["lots", 1, "parents"]],
    ["a share in percent", [founder, blend("B", ["A", 100])], ["lots", 1, "parents", 0, "share"]],
    ["a lot that is its own parent", [founder, grownFrom("B", "B")], ["lots"]],
    ["a ring of three", [founder, grownFrom("B", "D"), grownFrom("C", "B"), grownFrom("D", "C")], ["lots"]],
    ["a founder too alike", [{ ...founder, inbreeding: 0.2, coancestry: 0.61 }], ["lots", 0, "coancestry"]],
    ["foreign pollen above 1", [founder, grownFrom("B", "A", { foreignPollen: 2 })], ["lots", 1, "foreignPollen"]],
    ["no pollen parent", [founder, grownFrom("B", "A", { pollenParents: 0 })], ["lots", 1, "pollenParents"]],
    ["more seed than pollen parents", [founder, grownFrom("B", "A", { seedParents: 11 })], ["lots", 1, "seedParents"]],
  ])("%s is refused at its place", (_, lots, path) => {
    expect(refusedAt(lots)).toEqual([path]);
  });

  it("a split of two lots is refused", () => {
    const two: LineageLot = { ...blend("C", ["A", 0.5], ["B", 0.5]), kind: "split" } as LineageLot;
    expect(refusedAt([founder, grownFrom("B", "A"), two])).toEqual([["lots", 2, "parents"]]);
  });

  it("every faulty lot is named, not the first alone", () => {
    const lots = [founder, grownFrom("B", "A", { seedParents: 11 }), grownFrom("C", "X", { pollenParents: 0 })];
    expect(refusedAt(lots)).toEqual([
      ["lots", 1, "seedParents"],
      ["lots", 2, "pollenParents"],
      ["lots", 2, "parents", 0, "id"],
    ]);
  });

  it("a pair must name lots of the lineage", () => {
    expect(refusedAt([founder], [["A", "Q"]])).toEqual([["pairs", 0, 1]]);
  });

  it("a ring is spelled out", () => {
    const [ring] = refusalsOf(lineage({ lots: [founder, grownFrom("B", "C"), grownFrom("C", "B")] }));
    expect(ring?.sentence).toBe('"B from C from B" is a ring; no lot can be its own ancestor: mend one of these');
  });

  it("shares within 1e-6 of 1 are scaled, those beyond are refused", () => {
    const shares = (first: number) =>
      lineage({ lots: [founder, { ...founder, id: "B" }, blend("C", ["A", first], ["B", 0.5])] });
    expect(answered(shares(0.5000009)).lots[2]?.generations).toBe(0);
    expect(shares(0.500002).ok).toBe(false);
  });

  it("an empty lineage is no fault", () => {
    expect(answered(lineage({ lots: [] }))).toEqual({ lots: [], pairs: [], assumed: [] });
  });
});

describe("whatever the lineage", () => {
  const sizes = fc.record({
    pollenParents: fc.integer({ min: 1, max: 30 }),
    part: fc.double({ min: 0, max: 1, noNaN: true }),
    selfingRate: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  const growOut = (id: string, parent: string, size: { pollenParents: number; part: number; selfingRate: number }) =>
    grownFrom(id, parent, {
      pollenParents: size.pollenParents,
      seedParents: Math.max(1, Math.round(size.part * size.pollenParents)),
      selfingRate: size.selfingRate,
    });
  const chainOf = (steps: Parameters<typeof growOut>[2][]) => [
    founder,
    ...steps.map((size, step) => growOut(`${step}`, step === 0 ? "A" : `${step - 1}`, size)),
  ];

  it("diversity retained never rises along a chain of single parents without foreign pollen", () => {
    fc.assert(
      fc.property(fc.array(sizes, { minLength: 1, maxLength: 12 }), (steps) => {
        const retained = answered(lineage({ lots: chainOf(steps) })).lots.map((lot) => lot.diversityRetained);
        retained.slice(1).forEach((kept, step) => {
          expect(kept).toBeLessThanOrEqual((retained[step] as number) + 1e-12);
        });
      }),
    );
  });

  it("a blend's coancestry is at most the largest among its parts and their pairs, its own with a part likewise", () => {
    const parts = fc.array(fc.tuple(fc.nat(), fc.integer({ min: 1, max: 9 })), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(sizes, { minLength: 3, maxLength: 10 }), parts, (steps, chosen) => {
        const lots = chainOf(steps);
        const ids = [...new Set(chosen.map(([at]) => (lots[at % lots.length] as LineageLot).id))];
        const weights = ids.map((_, index) => chosen[index]?.[1] ?? 1);
        const sum = weights.reduce((total, weight) => total + weight, 0);
        const mixed = blend("mix", ...ids.map((id, index): [string, number] => [id, (weights[index] as number) / sum]));
        const pairs = ids.flatMap((a) => ids.map((b): [string, string] => [a, b]));
        const result = answered(lineage({ lots: [...lots, mixed], pairs }));
        const largest = Math.max(...result.pairs.map((pair) => pair.coancestry));
        expect(result.lots.at(-1)?.coancestry).toBeLessThanOrEqual(largest + 1e-12);
      }),
    );
  });

  it("neither the order of the lots nor that of a lot's parents changes a figure", () => {
    const { input } = referenceCases<LineageInput>("lineage")[7] ?? { input: { lots: [] } };
    const turned = (lot: LineageLot): LineageLot =>
      lot.kind === "founder" ? lot : { ...lot, parents: [...lot.parents].reverse() };
    const forward = answered(lineage(input)).lots;
    const backward = answered(lineage({ lots: [...input.lots].reverse().map(turned) })).lots;
    expectAgreement([...backward].reverse(), forward);
  });

  it("a split may be asked for with its own parent: they are one pool", () => {
    const lots: LineageLot[] = [founder, grownFrom("B", "A"), { ...blend("S", ["B", 1]), kind: "split" } as LineageLot];
    const result = answered(
      lineage({
        lots,
        pairs: [
          ["S", "B"],
          ["B", "B"],
        ],
      }),
    );
    expect(result.pairs[0]?.coancestry).toBeCloseTo(result.lots[1]?.coancestry as number, 15);
    expect(result.pairs[1]?.coancestry).toBe(result.lots[1]?.coancestry);
  });
});

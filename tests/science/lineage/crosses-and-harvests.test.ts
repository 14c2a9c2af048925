import { describe, expect, it } from "vitest";
import { blendAdvice } from "@/lib/science/blend/blend-advice";
import { geneDrop } from "@/lib/science/gene-drop/gene-drop";
import { followLots } from "@/lib/science/lineage/follow-lots";
import { lineage } from "@/lib/science/lineage/lineage";
import type { GrowOutLot, LineageInput, LineageLot } from "@/lib/science/lineage/lots";
import { pedigree } from "@/lib/science/lineage/pedigree";
import { answered, expectAgreement, pathsOf, referenceCases, refusalsOf } from "../agreement";

const founder = (id: string, inbreeding = 0): LineageLot => ({ id, kind: "founder", inbreeding });

const crossOf = (id: string, seed: string, pollen: string, more: Partial<GrowOutLot> = {}): GrowOutLot => ({
  id,
  kind: "grow-out",
  parents: [
    { id: seed, share: 0.5, role: "seed parent" },
    { id: pollen, share: 0.5, role: "pollen parent" },
  ],
  sexes: "separate",
  seedParents: 5,
  pollenParents: 4,
  ...more,
});

const harvestOf = (id: string, parent: string, seedShares: readonly number[], more: Partial<GrowOutLot> = {}) =>
  ({
    id,
    kind: "grow-out",
    parents: [{ id: parent, share: 1 }],
    plants: "bed",
    pollenParents: 10,
    seedParents: seedShares.length,
    seedShares,
    ...more,
  }) satisfies GrowOutLot;

it("agrees with 300 random trees of crosses and repeated harvests, each plant worked through by itself", () => {
  for (const { input, expected } of referenceCases<LineageInput>("lineage-crosses")) {
    expectAgreement(answered(lineage(input)), expected, { relative: 1e-8, absolute: 1e-11 });
  }
});

it("gives the same by both exact ways of following lots", () => {
  for (const { input } of referenceCases<LineageInput>("lineage-crosses").slice(0, 60)) {
    const ordered = answered(pedigree(input.lots));
    const [traced, inUse] = [followLots(ordered, "trace"), followLots(ordered, "in-use")];
    ordered.lots.forEach((_, rank) => {
      expect(inUse.coancestry[rank]).toBeCloseTo(traced.coancestry[rank] as number, 12);
      expect(inUse.inbreeding[rank]).toBeCloseTo(traced.inbreeding[rank] as number, 12);
    });
  }
});

describe("a cross", () => {
  // By hand: 5 seed parents of A and 4 pollen parents of B, both unrelated founders not inbred: Σ c² = ¼/5 + ¼/4 = 0.1125, times ½.
  it("of unrelated founders is not inbred and has the coancestry of both sides’ plants: 0.05625", () => {
    const [, , seed] = answered(lineage({ lots: [founder("A"), founder("B"), crossOf("C", "A", "B")] })).lots;
    expect(seed?.coancestry).toBeCloseTo(0.05625, 12);
    expect(seed?.inbreeding).toBe(0);
    expect(seed?.generations).toBe(1);
  });

  // By hand: A1 and A2 are 10 plants each of A, so Θ(A1, A2) = 0 and θ = 0.05; B is 10 plants of A1 and of A1 again.
  it("of a lot with its own child is as inbred as the two are near: θ of the parent", () => {
    const lots: LineageLot[] = [
      founder("A"),
      { id: "A1", kind: "grow-out", parents: [{ id: "A", share: 1 }], pollenParents: 10, seedParents: 10 },
      { id: "A2", kind: "grow-out", parents: [{ id: "A1", share: 1 }], pollenParents: 10, seedParents: 10 },
      crossOf("back", "A1", "A2"),
    ];
    const { lots: figures, pairs } = answered(lineage({ lots, pairs: [["A1", "A2"]] }));
    expect(figures[1]?.coancestry).toBeCloseTo(0.05, 12);
    expect(pairs[0]?.coancestry).toBeCloseTo(0.05, 12);
    expect(figures[3]?.inbreeding).toBeCloseTo(0.05, 12);
  });

  it("gives half from each side: foreign ancestry of the seed parent’s lot is halved", () => {
    const lots = [founder("A"), founder("B"), harvestOf("A1", "A", [1, 1], { foreignPollen: 0.4 })];
    const [, , one, cross] = answered(lineage({ lots: [...lots, crossOf("C", "A1", "B")] })).lots;
    expect(one?.foreignAncestry).toBeCloseTo(0.2, 12);
    expect(cross?.foreignAncestry).toBeCloseTo(0.1, 12);
  });

  it("of pollen from outside alone has nothing of the pollen parents: half foreign, not inbred", () => {
    const lots = [founder("A"), founder("B", 1), crossOf("C", "A", "B", { foreignPollen: 1 })];
    const cross = answered(lineage({ lots })).lots[2];
    expect(cross?.foreignAncestry).toBeCloseTo(0.5, 12);
    expect(cross?.inbreeding).toBe(0);
    expect(cross?.coancestry).toBeCloseTo(0.025, 12);
  });

  it("is refused with sides that are not one and one, not halves, or of plants that are both", () => {
    const lots = [founder("A"), founder("B")];
    const wrong = (more: Partial<GrowOutLot>) => lineage({ lots: [...lots, crossOf("C", "A", "B", more)] });
    const seedTwice = crossOf("C", "A", "B").parents.map((parent) => ({ ...parent, role: "seed parent" as const }));
    expect(pathsOf(wrong({ parents: seedTwice }))).toEqual([["lots", 2, "parents"]]);
    const uneven = crossOf("C", "A", "B").parents.map((parent, k) => ({ ...parent, share: k === 0 ? 0.4 : 0.6 }));
    expect(refusalsOf(wrong({ parents: uneven })).map(({ code }) => code)).toEqual(["cross-share", "cross-share"]);
    expect(pathsOf(wrong({ sexes: "hermaphrodite" }))).toContainEqual(["lots", 2, "sexes"]);
    expect(pathsOf(wrong({ plants: "bed" }))).toEqual([["lots", 2, "plants"]]);
  });
});

describe("two harvests of the same plants", () => {
  // By hand: 10 plants, pollen alike. Early seed of plants 1 and 2, late seed of plants 2 and 3, half each. c = ½(q + 0.1):
  // early 0.3, 0.3, 0.05 (8 times); late 0.05, 0.3, 0.3, 0.05 (7 times).
  // Σ c² = 2·0.09 + 8·0.0025 = 0.2; Σ c c' = 0.3·0.05 + 0.09 + 0.05·0.3 + 7·0.0025 = 0.1375. Times S = ½.
  const early = harvestOf("early", "A", [0.5, 0.5, 0]);
  const late = harvestOf("late", "A", [0, 0.5, 0.5]);

  it("are as near as the plants that they share: 0.06875, each 0.1 within itself", () => {
    const lots = [founder("A"), early, late];
    const { lots: figures, pairs } = answered(lineage({ lots, pairs: [["early", "late"]] }));
    expect(figures[1]?.coancestry).toBeCloseTo(0.1, 12);
    expect(figures[2]?.coancestry).toBeCloseTo(0.1, 12);
    expect(pairs[0]?.coancestry).toBeCloseTo(0.06875, 12);
  });

  it("with other plants are only as near as their parent lot is to itself", () => {
    const { plants: _none, ...alone } = late;
    const { pairs } = answered(lineage({ lots: [founder("A"), early, alone], pairs: [["early", "late"]] }));
    expect(pairs[0]?.coancestry).toBe(0);
  });

  it("mixed half and half are as one harvest of all: (0.1 + 0.06875)/2", () => {
    const advice = answered(blendAdvice({ lots: [founder("A"), early, late], candidates: ["early", "late"] }));
    expect(advice.coancestry).toBeCloseTo(0.084375, 10);
    const whole = harvestOf("whole", "A", [0.25, 0.5, 0.25]);
    expect(answered(lineage({ lots: [founder("A"), whole] })).lots[1]?.coancestry).toBeCloseTo(0.084375, 12);
  });

  it("lie within four standard errors of the simulation, as crosses and what comes of them do", () => {
    const lots: LineageLot[] = [
      founder("A"),
      founder("B", 0.5),
      early,
      late,
      crossOf("cross", "early", "B"),
      {
        id: "mix",
        kind: "blend",
        parents: [
          { id: "late", share: 0.5 },
          { id: "cross", share: 0.5 },
        ],
      },
      { id: "next", kind: "grow-out", parents: [{ id: "mix", share: 1 }], pollenParents: 8, seedParents: 5 },
    ];
    const pairs = [
      ["early", "late"],
      ["late", "cross"],
      ["next", "early"],
    ] as const;
    const told = answered(lineage({ lots, pairs }));
    const drawn = answered(geneDrop({ lots, pairs, replicates: 4000, seed: 7 }));
    told.lots.forEach(({ id, coancestry, inbreeding }, place) => {
      const one = drawn.lots[place];
      expect(Math.abs((one?.coancestry.mean ?? Number.NaN) - coancestry), id).toBeLessThanOrEqual(
        4 * (one?.coancestry.standardError ?? 0) + 1e-12,
      );
      expect(Math.abs((one?.inbreeding.mean ?? Number.NaN) - inbreeding), id).toBeLessThanOrEqual(
        4 * (one?.inbreeding.standardError ?? 0) + 1e-12,
      );
    });
    told.pairs.forEach(({ coancestry }, place) => {
      const { mean, standardError } = drawn.pairs[place]?.coancestry ?? { mean: Number.NaN, standardError: 0 };
      expect(Math.abs(mean - coancestry)).toBeLessThanOrEqual(4 * standardError);
    });
  });

  it("are refused where they do not say the same of the plants, or only how uneven their seed was", () => {
    const other = lineage({ lots: [founder("A"), early, { ...late, pollenParents: 12 }] });
    expect(pathsOf(other)).toEqual([["lots", 2, "pollenParents"]]);
    const spread = lineage({ lots: [founder("A"), early, { ...late, seedShares: { cv: 0.3 } }] });
    expect(pathsOf(spread)).toEqual([["lots", 2, "seedShares", "cv"]]);
  });
});

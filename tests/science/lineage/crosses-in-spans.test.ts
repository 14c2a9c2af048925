import { describe, expect, it } from "vitest";
import { lineageSpan } from "@/lib/science/lineage/lineage-span";
import type { LineageResult } from "@/lib/science/lineage/lots";
import type { GrowOutAsKnown, LineageSpanInput, LotAsKnown } from "@/lib/science/lineage/span-lots";
import { answered, pathsOf, referenceCases } from "../agreement";

const founders: LotAsKnown[] = [
  { id: "A", kind: "founder" },
  { id: "B", kind: "founder" },
];

const cross: GrowOutAsKnown = {
  id: "C",
  kind: "grow-out",
  parents: [
    { id: "A", share: 0.5, role: "seed parent" },
    { id: "B", share: 0.5, role: "pollen parent" },
  ],
  sexes: "separate",
  seedShares: "equal",
  seedParents: { low: 5, high: 10 },
  pollenParents: { low: 4, high: null },
};

it("both ends are the figure itself where all is known, in 300 trees of crosses and repeated harvests", () => {
  for (const { input, expected } of referenceCases<LineageSpanInput>("lineage-crosses")) {
    const known = (expected as LineageResult).lots;
    answered(lineageSpan({ lots: input.lots })).lots.forEach((span, place) => {
      for (const key of ["coancestry", "inbreeding", "generations"] as const) {
        expect(span[key].low, `${span.id} ${key}`).toBeCloseTo(known[place]?.[key] ?? Number.NaN, 9);
        expect(span[key].high, `${span.id} ${key}`).toBeCloseTo(known[place]?.[key] ?? Number.NaN, 9);
      }
    });
  }
});

describe("a cross of which the plants are between bounds", () => {
  // By hand, founders unrelated: θ = ½(¼/Nf + ¼/Nm), from 10 and no end of pollen parents to 5 and 4.
  it("lies between its worst and its best: 0.0125 to 0.05625", () => {
    const span = answered(lineageSpan({ lots: [...founders, cross] })).lots[2];
    expect(span?.coancestry.low).toBeCloseTo(0.0125, 12);
    expect(span?.coancestry.high).toBeCloseTo(0.05625, 12);
    expect(span?.inbreeding).toEqual({ low: 0, high: 0 });
    expect(span?.effectiveSize?.low).toBeCloseTo(80 / 9, 12);
  });

  it("is as inbred as its sides may be near: founders who may be kin", () => {
    const kin = founders.map((lot) => ({ ...lot, coancestry: 0.2 }) as LotAsKnown);
    const founderPairs = [{ a: "A", b: "B", coancestry: "unknown" as const }];
    const span = answered(lineageSpan({ lots: [...kin, cross], founderPairs })).lots[2];
    expect(span?.inbreeding.low).toBe(0);
    expect(span?.inbreeding.high).toBeCloseTo(0.2, 12);
  });
});

it("plants that were not counted cannot be joined plant by plant", () => {
  const [one, other] = ["early", "late"].map((id): GrowOutAsKnown => {
    const parents = [{ id: "A", share: 1 }];
    return {
      id,
      kind: "grow-out",
      parents,
      plants: "bed",
      seedParents: 3,
      seedShares: "equal",
      pollenParents: { low: 5, high: 9 },
    };
  });
  const outcome = lineageSpan({ lots: [...founders, one as LotAsKnown, other as LotAsKnown] });
  expect(pathsOf(outcome)).toEqual([
    ["lots", 2, "plants"],
    ["lots", 3, "plants"],
  ]);
});

it("harvests whose selfing rate lies between two bring the span of what they share into their mix", () => {
  const harvest = (id: string, seedShares: number[], rate: number | { low: number; high: number }): GrowOutAsKnown => ({
    ...{ id, kind: "grow-out", parents: [{ id: "A", share: 1 }], plants: "bed", pollenParents: 6 },
    ...{ seedParents: 3, seedShares, selfingRate: rate },
  });
  const mix: LotAsKnown = {
    ...{ id: "mix", kind: "blend" },
    parents: [
      { id: "early", share: 0.5 },
      { id: "late", share: 0.5 },
    ],
  };
  const at = (rate: number | { low: number; high: number }) => {
    const lots = [...founders, harvest("early", [1, 1, 0], rate), harvest("late", [0, 1, 3], rate), mix];
    return answered(lineageSpan({ lots })).lots[4]?.coancestry;
  };
  const span = at({ low: 0.1, high: 0.6 });
  for (const rate of [0.1, 0.2, 0.35, 0.5, 0.6]) {
    const point = at(rate);
    expect(point?.low).toBeGreaterThanOrEqual((span?.low ?? 1) - 1e-12);
    expect(point?.high).toBeLessThanOrEqual((span?.high ?? 0) + 1e-12);
  }
});

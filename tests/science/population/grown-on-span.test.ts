import { expect, it } from "vitest";
import type { LotAsKnown } from "@/lib/science/lineage/span-lots";
import { grownOn } from "@/lib/science/population/grown-on";
import { grownOnSpan } from "@/lib/science/population/grown-on-span";
import { answered, pathsOf } from "../agreement";

const founder = { id: "A", kind: "founder" } as const;
const grown = { id: "B", kind: "grow-out", parents: [{ id: "A", share: 1 }], seedShares: "equal" } as const;
const between: LotAsKnown = { ...grown, pollenParents: { low: 10, high: 60 }, seedParents: 10 };
const plan = {
  parents: [{ id: "B", share: 1 }],
  plot: { pollenParents: 20, seedParents: 20 },
  years: 30,
  yearsBetween: 15,
};

it("seed of 10 to 60 plants, then twice 20 alike, by hand at both ends: θ + (1/20)(½(1 + F) − θ), F its own", () => {
  const steps = answered(grownOnSpan({ known: { lots: [founder, between] }, ...plan }));
  expect(steps.map(({ year }) => year)).toEqual([null, 0, 15]);
  // worst, 10 of 10: θ = F = 0.05 → 0.07375 → 0.09690625
  expect(steps.map(({ figures }) => Number(figures.coancestry.high.toFixed(12)))).toEqual([0.05, 0.07375, 0.09690625]);
  // best, seed of 10 of 60: θ 0.01875; F = ½·P_MF = ½/60, so S 0.504166… → 0.0430208333… = F → 0.0669453125
  expect(steps[0]?.figures.coancestry.low).toBeCloseTo(0.01875, 12);
  expect(steps[1]?.figures.coancestry.low).toBeCloseTo(0.01875 + (0.5 * (1 + 0.5 / 60) - 0.01875) / 20, 12);
  expect(steps[2]?.figures.coancestry.low).toBeCloseTo(0.0669453125, 12);
});

it("is the point of grownOn at both ends where all is known, and is refused what that is refused", () => {
  const known = { ...grown, pollenParents: 12, seedParents: 8 };
  const points = answered(grownOn({ lots: [founder, known], ...plan }));
  const spans = answered(grownOnSpan({ known: { lots: [founder, known] }, ...plan }));
  spans.forEach(({ figures }, at) => {
    const point = points[at]?.figures.diversityRetained ?? 0;
    expect(figures.diversityRetained.low).toBeCloseTo(point, 12);
    expect(figures.diversityRetained.high).toBeCloseTo(point, 12);
  });
  const input = { known: { lots: [founder, between] }, ...plan };
  expect(pathsOf(grownOnSpan({ ...input, years: 0, yearsBetween: -1 }))).toEqual([["years"], ["yearsBetween"]]);
  expect(grownOnSpan({ ...input, parents: [] }).ok).toBe(false);
  expect(grownOnSpan({ ...input, parents: [{ id: "Z", share: 1 }] }).ok).toBe(false);
});

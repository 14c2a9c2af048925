import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineage } from "@/lib/science/lineage/lineage";
import { lineageSpan } from "@/lib/science/lineage/lineage-span";
import type { LineageLot } from "@/lib/science/lineage/lots";
import type { LotAsKnown } from "@/lib/science/lineage/span-lots";
import { answered } from "../agreement";

const seed = 20261127;
const ROUNDING = 1e-9;

/** What became of one lot, and what was written down of it: every true number lies where the record says it may. */
interface Told {
  readonly truth: LineageLot;
  readonly told: LotAsKnown;
}

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const bool = fc.boolean();

const plants = fc
  .record({
    separate: fc.boolean(),
    canSelf: bool,
    pollen: fc.integer({ min: 2, max: 12 }),
    seedPart: unit,
    below: fc.nat({ max: 5 }),
    above: fc.option(fc.nat({ max: 6 }), { nil: null }),
    weights: fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 12, maxLength: 12 }),
    rate: fc.constantFrom(0, 0.3, 0.8, 1),
    rateBelow: unit,
    rateAbove: unit,
    hide: fc.record({ pollen: bool, seed: bool, shares: bool, largest: bool, rate: bool }),
  })
  .map((each) => {
    const seedParents = 1 + Math.floor(each.seedPart * (each.pollen - 1));
    const shares = each.weights.slice(0, seedParents);
    const selfs = !each.separate && each.canSelf;
    const selfing = selfs ? each.rate : 0;
    const mating = each.separate ? { sexes: "separate" as const } : { selfIncompatible: !selfs };
    const around = (count: number) => ({
      low: Math.max(1, count - each.below),
      high: each.above === null ? null : count + each.above,
    });
    const total = shares.reduce((sum, share) => sum + share, 0);
    const { hide } = each;
    // Listed shares tell the number of plants by themselves.
    const hidden = hide.seed ? "unknown" : hide.largest ? { largest: Math.max(...shares) / total } : "unknown";
    return {
      truth: { pollenParents: each.pollen, seedParents, seedShares: shares, selfingRate: selfing, ...mating },
      told: {
        pollenParents: hide.pollen ? around(each.pollen) : each.pollen,
        seedParents: hide.seed ? around(seedParents) : seedParents,
        seedShares: hide.shares || hide.seed || (hide.pollen && hide.largest) ? hidden : shares,
        selfingRate:
          hide.rate && selfs
            ? { low: selfing * each.rateBelow, high: selfing + (1 - selfing) * each.rateAbove }
            : selfing,
        ...mating,
      } as const,
    };
  });

const lot = fc.record({
  kind: fc.constantFrom("grow-out", "grow-out", "grow-out", "blend"),
  from: fc.array(fc.nat(), { minLength: 1, maxLength: 3 }),
  weights: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 3, maxLength: 3 }),
  hideShares: fc.constantFrom("none", "none", "all", "rest"),
  foreign: fc.constantFrom(undefined, undefined, 0.1, 0.6),
  plants,
});

function told(id: string, before: readonly string[], each: typeof lot extends fc.Arbitrary<infer T> ? T : never): Told {
  const ids = [...new Set(each.from.map((place) => before[place % before.length] as string))];
  const total = ids.reduce((sum, _, place) => sum + (each.weights[place] as number), 0);
  const parents = ids.map((parent, place) => ({ id: parent, share: (each.weights[place] as number) / total }));
  const shown = parents.map(({ id: parent, share }, place) =>
    each.hideShares === "all" || (each.hideShares === "rest" && place > 0) ? { id: parent } : { id: parent, share },
  );
  if (each.kind === "blend")
    return { truth: { id, kind: "blend", parents }, told: { id, kind: "blend", parents: shown } };
  const foreign = each.foreign === undefined ? {} : { foreignPollen: each.foreign };
  return {
    truth: { id, kind: "grow-out", parents, ...each.plants.truth, ...foreign },
    told: { id, kind: "grow-out", parents: shown, ...each.plants.told, ...foreign },
  };
}

const history = fc
  .record({
    founders: fc.array(fc.record({ inbreeding: unit, part: unit }), { minLength: 1, maxLength: 3 }),
    lots: fc.array(lot, { minLength: 1, maxLength: 8 }),
  })
  .map(({ founders, lots }) => {
    const all: Told[] = founders.map(({ inbreeding, part }, place) => {
      const made = { id: `F${place}`, kind: "founder", inbreeding, coancestry: (part * (1 + inbreeding)) / 2 } as const;
      return { truth: made, told: made };
    });
    for (const each of lots)
      all.push(
        told(
          `L${all.length}`,
          all.map(({ truth }) => truth.id),
          each,
        ),
      );
    return all;
  });

describe("whatever the truth was, as far as the records allow it", () => {
  it("its figures lie within the span", () => {
    fc.assert(
      fc.property(history, (all) => {
        const point = answered(lineage({ lots: all.map(({ truth }) => truth) })).lots;
        const { lots } = answered(lineageSpan({ lots: all.map((each) => each.told) }));
        lots.forEach((span, place) => {
          const exact = point[place];
          // Where nothing bounds a grow-out the measure begins anew, and compares with nothing before it.
          if (!exact || span.since.length > 0) return;
          for (const key of ["coancestry", "inbreeding", "diversityRetained", "generations"] as const) {
            expect(exact[key], `${span.id} ${key}`).toBeGreaterThanOrEqual(span[key].low - ROUNDING);
            expect(exact[key], `${span.id} ${key}`).toBeLessThanOrEqual(span[key].high + ROUNDING);
          }
        });
      }),
      { seed, numRuns: 400 },
    );
  });

  it("and where nothing is left out the span is the figure itself", () => {
    fc.assert(
      fc.property(history, (all) => {
        const lots = all.map(({ truth }) => truth);
        const point = answered(lineage({ lots })).lots;
        const spans = answered(lineageSpan({ lots })).lots;
        spans.forEach((span, place) => {
          for (const key of ["coancestry", "inbreeding"] as const) {
            expect(span[key].low).toBeCloseTo(point[place]?.[key] ?? Number.NaN, 9);
            expect(span[key].high).toBeCloseTo(point[place]?.[key] ?? Number.NaN, 9);
          }
        });
      }),
      { seed, numRuns: 200 },
    );
  });

  it("the order in which the lots are given moves nothing", () => {
    fc.assert(
      fc.property(history, (all) => {
        const lots = all.map((each) => each.told);
        const straight = answered(lineageSpan({ lots })).lots;
        const turned = answered(lineageSpan({ lots: [...lots].reverse() })).lots.toReversed();
        straight.forEach((span, place) => {
          expect(turned[place]?.coancestry.low).toBeCloseTo(span.coancestry.low, 9);
          expect(turned[place]?.coancestry.high).toBeCloseTo(span.coancestry.high, 9);
        });
      }),
      { seed, numRuns: 200 },
    );
  });
});

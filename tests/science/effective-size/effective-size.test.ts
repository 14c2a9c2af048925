import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type EffectiveSizeInput,
  effectiveSize,
  sizeOfSoundParents,
} from "@/lib/science/effective-size/effective-size";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

const ne = (input: EffectiveSizeInput) => answered(effectiveSize(input)).effectiveSize as number;

describe("published sizes", () => {
  it("10 males and 10 females count as 20 (Christensen, course text, example 1)", () => {
    expect(ne({ pollenParents: 10, seedParents: 10, sexes: "separate" })).toBeCloseTo(20, 9);
  });

  it("1 male and 10 females count as 3.636 (Christensen prints 3.7)", () => {
    expect(ne({ pollenParents: 1, seedParents: 10, sexes: "separate" })).toBeCloseTo(40 / 11, 9);
  });

  it("100 males and 100,000 females count as 399.6 (Christensen prints 400)", () => {
    expect(ne({ pollenParents: 100, seedParents: 100_000, sexes: "separate" })).toBeCloseTo(399.6003996003996, 6);
  });

  it("seed of one open-pollinated mother counts as close to 4 (Kang, Lai & Lindgren 2002)", () => {
    expect(ne({ pollenParents: 1_000_000, seedParents: 1 })).toBeCloseTo(3.999988, 6);
  });

  it("a partial selfer loses N(1 - s/2) (Gale & Lawrence 1984, quoted by Vencovsky & Crossa 1999)", () => {
    const selfer = (s: number) => ({ pollenParents: 30, seedParents: 30, selfingRate: s, inbreeding: s / (2 - s) });
    expect(ne(selfer(0.5))).toBeCloseTo(22.5, 9);
    expect(ne(selfer(0.9))).toBeCloseTo(16.5, 9);
    expect(ne(selfer(1))).toBeCloseTo(15, 9);
  });

  it("the figure alone is the same (30 plants that self at 0.9: 16.5, Gale & Lawrence 1984; 23.364 by gene drop)", () => {
    const selfer = { pollenParents: 30, seedParents: 30, selfingRate: 0.9 };
    expect(sizeOfSoundParents(selfer, 0.9 / 1.1)).toBeCloseTo(16.5, 9);
    expect(sizeOfSoundParents({ pollenParents: 40, seedParents: 10, selfIncompatible: true }, 0)).toBeCloseTo(
      23.364,
      3,
    );
    expect(sizeOfSoundParents({ pollenParents: 2, seedParents: 2, selfingRate: 1 }, 1)).toBeCloseTo(1, 9);
  });
});

describe("worked by hand or by gene drop", () => {
  it("N plants that all give equal seed count as N", () => {
    expect(ne({ pollenParents: 50, seedParents: 50 })).toBeCloseTo(50, 9);
  });

  it("40 rogued of 100 before pollen leaves 60, after pollen 85.714 (4NfNm/(Nm + 3Nf))", () => {
    expect(ne({ pollenParents: 60, seedParents: 60 })).toBeCloseTo(60, 9);
    expect(ne({ pollenParents: 100, seedParents: 60 })).toBeCloseTo(85.71428571428571, 9);
  });

  it("shares 0.5, 0.3, 0.2 on both sides count as 1/0.38", () => {
    const shares = [0.5, 0.3, 0.2];
    expect(ne({ pollenParents: 3, seedParents: 3, seedShares: shares, pollenShares: shares })).toBeCloseTo(1 / 0.38, 9);
  });

  it("recorded weights of 10 plants count as 8.366, with 20 more pollen plants as 14.381 (gene drop 8.366, 14.377)", () => {
    const seedShares = [120, 80, 60, 45, 30, 25, 20, 10, 6, 4];
    expect(ne({ pollenParents: 10, seedParents: 10, seedShares })).toBeCloseTo(8.365794358317428, 9);
    expect(ne({ pollenParents: 30, seedParents: 10, seedShares })).toBeCloseTo(14.381376117927282, 9);
  });

  it("seed from 10 of 40 self-incompatible plants counts as 23.364 (gene drop 23.356)", () => {
    expect(ne({ pollenParents: 40, seedParents: 10, selfIncompatible: true })).toBeCloseTo(23.364, 3);
  });

  it("seed from 6 of 20 plants that self at 0.6 counts as 5.615 (gene drop 5.611)", () => {
    const input = { pollenParents: 20, seedParents: 6, selfingRate: 0.6, inbreeding: 0.4285714285714286 };
    expect(ne(input)).toBeCloseTo(5.614973262032085, 9);
  });

  it("one plant raised from each of 20 mothers counts as 4N/3, three as 21.751 (gene drop 26.684, 21.746)", () => {
    const families = { pollenParents: 20, seedParents: 20, seedShares: "equal" as const };
    expect(ne({ ...families, plantsPerSeedParent: 1 })).toBeCloseTo(80 / 3, 9);
    expect(ne({ ...families, plantsPerSeedParent: 3 })).toBeCloseTo(21.751, 3);
  });

  it("a coefficient of variation of 1 halves 80 plants (N/(1 + CV²))", () => {
    const cv = { cv: 1 };
    const shares = { pollenParents: 80, seedParents: 80, seedShares: cv, pollenShares: cv };
    expect(answered(effectiveSize({ ...shares, selfingRate: 1 })).effectiveSize).toBeCloseTo(40, 9);
  });

  it("no size is given where no two genes can come from one plant", () => {
    const input = { pollenParents: 5, seedParents: 5, selfingRate: 1, plantsPerSeedParent: 1 };
    const result = answered(effectiveSize(input));
    expect(result).toMatchObject({ effectiveSize: null, diversityLost: 0, sameParentProbability: 0, assumed: [] });
  });

  it("a tassel taken leaves a seed parent with pollen share 0 and the same size as separate sexes", () => {
    const detasselled = { pollenParents: 4, seedParents: 2, seedShares: [1, 1], pollenShares: [0, 0, 1, 1] };
    expect(ne(detasselled)).toBeCloseTo(ne({ pollenParents: 2, seedParents: 2, sexes: "separate" }), 12);
  });
});

it("agrees with 300 populations summed plant by plant in exact fractions", () => {
  for (const { input, expected } of referenceCases<EffectiveSizeInput>("effective-size")) {
    expectAgreement(answered(effectiveSize(input)), expected);
  }
});

describe("what was assumed", () => {
  it("names each default that moves the figure and none that was stated", () => {
    const codes = answered(effectiveSize({ pollenParents: 9, seedParents: 4 })).assumed.map(({ code }) => code);
    expect(codes).toEqual(["seed-shares-equal", "pollen-shares-equal", "selfing-by-chance-only", "parents-not-inbred"]);
    const stated = {
      pollenParents: 9,
      seedParents: 4,
      seedShares: "equal",
      pollenShares: "equal",
      selfingRate: 0,
      inbreeding: 0,
    } as const;
    expect(answered(effectiveSize(stated)).assumed).toEqual([]);
  });

  it("assumes no selfing rate where no plant can self", () => {
    const codes = (input: EffectiveSizeInput) => answered(effectiveSize(input)).assumed.map(({ code }) => code);
    expect(codes({ pollenParents: 9, seedParents: 4, sexes: "separate" })).not.toContain("selfing-by-chance-only");
    expect(codes({ pollenParents: 9, seedParents: 4, selfIncompatible: true })).not.toContain("selfing-by-chance-only");
  });
});

describe("refusals", () => {
  const good = { pollenParents: 10, seedParents: 5 };
  const refusedAt = (input: EffectiveSizeInput) => pathsOf(effectiveSize(input));

  it.each([
    ["no pollen parent", { ...good, pollenParents: 0 }, ["pollenParents"]],
    ["half a seed parent", { ...good, seedParents: 2.5 }, ["seedParents"]],
    ["more seed than pollen parents", { ...good, seedParents: 11 }, ["seedParents"]],
    ["a selfing rate in percent", { ...good, selfingRate: 20 }, ["selfingRate"]],
    ["selfing with separate sexes", { ...good, sexes: "separate", selfingRate: 0.1 }, ["selfingRate"]],
    ["selfing of a self-incompatible crop", { ...good, selfIncompatible: true, selfingRate: 0.1 }, ["selfingRate"]],
    ["self-incompatible separate sexes", { ...good, sexes: "separate", selfIncompatible: true }, ["selfIncompatible"]],
    [
      "a lone plant that cannot self",
      { pollenParents: 1, seedParents: 1, selfIncompatible: true },
      ["selfIncompatible"],
    ],
    ["too few seed shares", { ...good, seedShares: [1, 2] }, ["seedShares"]],
    ["a negative share", { ...good, seedShares: [1, 2, -1, 1, 1] }, ["seedShares", 2]],
    ["shares that are all 0", { ...good, seedShares: [0, 0, 0, 0, 0] }, ["seedShares"]],
    ["a coefficient of variation beyond √(n - 1)", { ...good, seedShares: { cv: 2.01 } }, ["seedShares", "cv"]],
    ["k with unequal shares", { ...good, seedShares: { cv: 1 }, plantsPerSeedParent: 2 }, ["plantsPerSeedParent"]],
    ["one plant raised in all", { pollenParents: 3, seedParents: 1, plantsPerSeedParent: 1 }, ["plantsPerSeedParent"]],
    ["an inbreeding above 1", { ...good, inbreeding: 1.2 }, ["inbreeding"]],
  ] as const)("%s is refused at its place", (_, input, path) => {
    expect(refusedAt(input as EffectiveSizeInput)).toEqual([path]);
  });

  it("a plant that sheds all the pollen cannot be fathered by itself where selfing is impossible", () => {
    const lone = { pollenParents: 3, seedParents: 2, selfIncompatible: true };
    expect(refusedAt({ ...lone, pollenShares: [1, 0, 0] })).toEqual([["pollenShares"]]);
    expect(ne({ ...lone, pollenShares: [0, 0, 1] })).toBeCloseTo(1 / (2 * 0.25 ** 2 + 0.25), 12);
  });

  it("a coefficient of variation of exactly √(n - 1) is one plant that gave everything", () => {
    const all = { ...good, seedShares: { cv: 2 } };
    expect(answered(effectiveSize(all)).seedParentTerm).toBeCloseTo(1, 12);
  });

  it("the sentence says what stands there and what would be right", () => {
    const outcome = effectiveSize({ ...good, seedParents: 11 });
    expect(outcome.ok ? "" : outcome.refusals[0]?.sentence).toBe(
      "11 seed parents are more than the 10 that shed pollen; " +
        "every seed parent of a hermaphrodite crop is among the pollen parents: count it there too",
    );
  });
});

describe("whatever the shares", () => {
  const plants = fc
    .integer({ min: 1, max: 40 })
    .chain((nm) => fc.tuple(fc.constant(nm), fc.integer({ min: 1, max: nm })));
  const weights = (n: number) => fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: n, maxLength: n });

  it("at equal pollen shares Ne is at most 4/(1/Nf + 3/Nm), reached at equal seed shares", () => {
    const shared = plants.chain(([nm, nf]) => fc.tuple(fc.constant(nm), fc.constant(nf), weights(nf)));
    fc.assert(
      fc.property(shared, ([nm, nf, seedShares]) => {
        const bound = 4 / (1 / nf + 3 / nm);
        expect(ne({ pollenParents: nm, seedParents: nf, seedShares })).toBeLessThanOrEqual(bound * (1 + 1e-9));
        expect(ne({ pollenParents: nm, seedParents: nf })).toBeCloseTo(bound, 9);
      }),
    );
  });

  it("Ne lies between 1 and the plants that took part, and the unit of the shares does not matter", () => {
    const both = plants.chain(([nm, nf]) => fc.tuple(fc.constant([nm, nf]), weights(nf), weights(nm)));
    fc.assert(
      fc.property(both, fc.double({ min: 0, max: 1, noNaN: true }), ([[nm, nf], seedShares, pollenShares], s) => {
        const input = {
          pollenParents: nm as number,
          seedParents: nf as number,
          selfingRate: s,
          seedShares,
          pollenShares,
        };
        const size = ne(input);
        expect(size).toBeGreaterThanOrEqual(1 - 1e-9);
        expect(size).toBeLessThanOrEqual((nm as number) * (1 + 1e-9));
        expect(ne({ ...input, seedShares: seedShares.map((share) => share * 0.001) })).toBeCloseTo(size, 6);
      }),
    );
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adviseMix } from "@/lib/science/blend/advise-mix";
import { type BlendAdviceInput, blendAdvice } from "@/lib/science/blend/blend-advice";
import { mixed } from "@/lib/science/blend/least-mix";
import type { LineageLot } from "@/lib/science/lineage/lots";
import { answered, expectAgreement, pathsOf, referenceCases, refusalsOf } from "../agreement";

/** What is searched: 1e-6 relative. Ours ends well within. */
const SEARCHED = { relative: 1e-9, absolute: 1e-12 };

const founder = (id: string, coancestry: number): LineageLot => ({ id, kind: "founder", inbreeding: 0, coancestry });
const sharesOf = (input: BlendAdviceInput) =>
  answered(blendAdvice(input)).shares.map(({ id, share }) => [id, Number(share.toFixed(10))]);

describe("worked by hand", () => {
  it("two unrelated lots are mixed in inverse proportion to their θ: 0.1 and 0.2 as 2 to 1, θ = 1/15", () => {
    const advice = answered(blendAdvice({ lots: [founder("A", 0.1), founder("B", 0.2)], candidates: ["A", "B"] }));
    expect(advice.coancestry).toBeCloseTo(1 / 15, 12);
    expect(advice.diversityRetained).toBeCloseTo(14 / 15, 12);
    expect(advice.shares.map(({ id }) => id)).toEqual(["A", "B"]);
    expect(advice.shares[0]?.share).toBeCloseTo(2 / 3, 12);
    expect(advice.bestSingle).toEqual({ id: "A", diversityRetained: 0.9 });
    expect(advice.assumed).toEqual([]);
  });

  it("a lot is never mixed with what was only grown from it: genes are not added by growing", () => {
    const grown: LineageLot = {
      ...{ id: "B", kind: "grow-out", parents: [{ id: "A", share: 1 }], pollenParents: 10, seedParents: 10 },
    };
    expect(sharesOf({ lots: [founder("A", 0.1), grown], candidates: ["B", "A"] })).toEqual([["A", 1]]);
  });

  it("two lines of one founder: θ 1/20 and 1/40, nothing in common but θ_A = 0, so 1 to 2 and θ = 1/60", () => {
    const line = (id: string, plants: number): LineageLot => ({
      ...{ id, kind: "grow-out", parents: [{ id: "A", share: 1 }], pollenParents: plants, seedParents: plants },
    });
    const lots = [founder("A", 0), line("B", 10), line("C", 20)];
    expect(answered(blendAdvice({ lots, candidates: ["B", "C"] })).coancestry).toBeCloseTo(1 / 60, 12);
    expect(sharesOf({ lots, candidates: ["C", "B"] })).toEqual([
      ["C", Number((2 / 3).toFixed(10))],
      ["B", Number((1 / 3).toFixed(10))],
    ]);
  });

  it("with a smallest share of 0.4 the second of three (0.1, 0.2, 0.3) goes in and the third does not", () => {
    // free: 6/11, 3/11, 2/11; of two with 0.4 at least: A and B as 0.6 and 0.4, θ = 0.36·0.1 + 0.16·0.2 = 0.068
    const lots = [founder("A", 0.1), founder("B", 0.2), founder("C", 0.3)];
    const input = { lots, candidates: ["C", "B", "A"] };
    expect(sharesOf({ ...input, minShare: 0.4 })).toEqual([
      ["B", 0.4],
      ["A", 0.6],
    ]);
    expect(answered(blendAdvice({ ...input, minShare: 0.4 })).coancestry).toBeCloseTo(0.068, 12);
    expect(answered(blendAdvice(input)).coancestry).toBeCloseTo(3 / 55, 12);
    expect(sharesOf({ ...input, minShare: 0.7 })).toEqual([["A", 1]]);
  });

  it("one candidate alone is the mix, and a founder of θ 0 keeps all", () => {
    const advice = answered(blendAdvice({ lots: [founder("A", 0)], candidates: ["A"], minShare: 1 }));
    expect(advice).toMatchObject({ shares: [{ id: "A", share: 1 }], coancestry: 0, diversityRetained: 1 });
  });
});

describe("agrees with every choice of lots tried in exact fractions", () => {
  referenceCases<BlendAdviceInput>("blend-advice").forEach(({ input, expected }, place) => {
    it(`case ${place + 1}: ${input.candidates.length} candidates, smallest share ${input.minShare ?? 0}`, () => {
      expectAgreement(answered(blendAdvice(input)), expected, SEARCHED);
    });
  });
});

describe("refusals", () => {
  const lots = [founder("A", 0.1), founder("B", 0.2)];
  it.each<[string, BlendAdviceInput, (string | number)[][]]>([
    ["no candidates", { lots, candidates: [] }, [["candidates"]]],
    ["one that is no lot", { lots, candidates: ["A", "X"] }, [["candidates", 1]]],
    ["one that stands twice", { lots, candidates: ["A", "B", "A"] }, [["candidates", 2]]],
    ["a smallest share above 1", { lots, candidates: ["A"], minShare: 1.1 }, [["minShare"]]],
    ["one below 0", { lots, candidates: ["A"], minShare: -0.1 }, [["minShare"]]],
    [
      "what lineage refuses, with the rest",
      { lots: [...lots, founder("A", 0.7)], candidates: ["X"], minShare: 2 },
      [["lots", 2, "id"], ["lots", 2, "coancestry"], ["candidates", 0], ["minShare"]],
    ],
  ])("%s", (_, input, paths) => {
    expect([...pathsOf(blendAdvice(input))].map(String).sort()).toEqual(paths.map(String).sort());
  });

  it("a search that would take too long is given up, never answered by a mix that may not be the best", () => {
    // 60 lots of about one θ, each with kinship of its own to every other, of which any 12 may go in
    const size = 60;
    const kinship = (i: number, j: number) =>
      0.1 + ((Math.min(i, j) * 31 + Math.max(i, j) * 17 + i * j * 7) % 19) / 400;
    const own = (i: number) => 0.3 + ((i * 7) % 5) / 100;
    const gram = Array.from({ length: size }, (_, i) =>
      Float64Array.from({ length: size }, (_, j) => (i === j ? own(i) : kinship(i, j))),
    );
    const names = gram.map((_, i) => `L${i}`);
    const outcome = adviseMix(names, gram, 1 / 12);
    expect(refusalsOf(outcome).map((each) => each.code)).toEqual(["too-many-choices"]);
  });
});

/** Coancestries of some lots: inner products of shares over common pools, and what each has alone. */
const coancestries = fc
  .array(
    fc.tuple(
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }),
      fc.double({ min: 0, max: 0.5, noNaN: true }),
    ),
    {
      minLength: 1,
      maxLength: 7,
    },
  )
  .map((lots) =>
    lots.map(([a, alone], i) =>
      Float64Array.from(
        lots,
        ([b], j) => a.reduce((sum, x, k) => sum + x * (b[k] as number), 0) / 6 + (i === j ? alone : 0),
      ),
    ),
  );

describe("whatever the lots", () => {
  const names = (count: number) => Array.from({ length: count }, (_, i) => `L${i}`);
  const floors = fc.constantFrom(0, 0.05, 0.1, 0.2, 0.25, 1 / 3, 0.5, 1);

  it("shares sum to 1, none is below the smallest, and θ is that of the shares", () => {
    fc.assert(
      fc.property(coancestries, floors, (gram, floor) => {
        const { shares, coancestry } = answered(adviseMix(names(gram.length), gram, floor));
        expect(shares.reduce((sum, each) => sum + each.share, 0)).toBeCloseTo(1, 12);
        for (const each of shares) expect(each.share).toBeGreaterThanOrEqual(floor);
        const all = names(gram.length).map((id) => shares.find((each) => each.id === id)?.share ?? 0);
        expect(coancestry).toBeCloseTo(mixed(gram, all), 12);
      }),
      { numRuns: 300 },
    );
  });

  it("no single lot and no other mix that keeps the smallest share holds more", () => {
    const others = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 7, maxLength: 7 });
    fc.assert(
      fc.property(coancestries, floors, others, (gram, floor, raw) => {
        const { coancestry, bestSingle } = answered(adviseMix(names(gram.length), gram, floor));
        expect(1 - coancestry).toBeGreaterThanOrEqual(bestSingle.diversityRetained - 1e-12);
        const most = Math.min(gram.length, Math.floor(1 / Math.max(floor, 1e-9) + 1e-9));
        const into = raw.slice(0, gram.length).map((each, i) => [each, i] as const);
        const chosen = into.sort((a, b) => b[0] - a[0]).slice(0, most);
        const sum = chosen.reduce((total, [each]) => total + each + 1e-9, 0);
        const mix = new Float64Array(gram.length);
        for (const [each, i] of chosen) mix[i] = floor + ((1 - floor * chosen.length) * (each + 1e-9)) / sum;
        expect(mixed(gram, mix)).toBeGreaterThanOrEqual(coancestry - 1e-12);
      }),
      { numRuns: 500 },
    );
  });

  it("a copy of a lot changes nothing", () => {
    fc.assert(
      fc.property(coancestries, fc.constantFrom(0, 0.1, 0.3), (gram, floor) => {
        const twice = [...gram, gram[0] as Float64Array].map((row) => Float64Array.from([...row, row[0] as number]));
        const { coancestry } = answered(adviseMix(names(gram.length), gram, floor));
        expect(answered(adviseMix(names(twice.length), twice, floor)).coancestry).toBeCloseTo(coancestry, 10);
      }),
      { numRuns: 100 },
    );
  });
});

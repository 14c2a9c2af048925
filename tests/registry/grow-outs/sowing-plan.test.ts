import { describe, expect, it } from "vitest";
import {
  gramsLeft,
  type LotToSow,
  moreThanInJar,
  plantsOfEach,
  proposedSowing,
  type ReserveHeld,
  reservesAfter,
} from "@/lib/registry/grow-outs/sowing-plan";

const reserve = (more: Partial<ReserveHeld> = {}): ReserveHeld => ({
  varietyId: "v",
  holderId: "h",
  seeds: 200,
  onHand: { value: 1000, low: 1000, high: 1000, grade: "counted" },
  good: ["a", "b"],
  ...more,
});
const lot = (id: string, more: Partial<LotToSow> = {}): LotToSow => ({
  ...{ id, number: id, varietyId: "v", variety: "V", year: "2025", holderId: "h", holder: "H" },
  ...{ grams: 200, thousandSeedGrams: 400, perGram: { min: 2, max: 4 }, objections: [] },
  ...{ treatment: null, treatmentSubstance: null, identityGrade: null, reserve: reserve() },
  test: { testId: "t", date: "2027-01-01", sown: 20, normal: 18 },
  ...more,
});

describe("a proposed sowing", () => {
  it("is sowing-count's for the plants, in grams by the lot's own seed weight", () => {
    // calculations.md 12: 20 plants at 0.9 from 18 of 20 with emergence 0.8 are 34 seeds; 34 × 400 g / 1000 = 13.6 g.
    const proposed = proposedSowing(lot("a"), 20);
    expect(proposed.sowing?.seeds).toBe(34);
    expect(proposed.grams).toBeCloseTo(13.6, 12);
  });

  it("is not known without a test, and has no weight without a seed weight", () => {
    expect(proposedSowing(lot("a", { test: null }), 20)).toEqual({ plants: 20, sowing: null, grams: null });
    expect(proposedSowing(lot("a", { thousandSeedGrams: null }), 20).grams).toBeNull();
  });

  it("shares the plants out, rounded up; shares that nobody told are even", () => {
    expect(plantsOfEach(30, [0.1, 0.9])).toEqual([3, 27]);
    expect(plantsOfEach(25, [null, null])).toEqual([13, 13]);
    expect(plantsOfEach(25, [0.4, null])).toEqual([13, 13]);
    expect(plantsOfEach(40, [null])).toEqual([40]);
    expect(plantsOfEach(10, [0.001, 0.999])).toEqual([1, 10]);
  });
});

describe("what a sowing leaves", () => {
  it("in the jar, in grams; not known where the jar or the seed's weight is not", () => {
    expect(gramsLeft(lot("a"), { amount: 100, unit: "seeds" })).toBe(160);
    expect(gramsLeft(lot("a"), { amount: 250, unit: "g" })).toBe(-50);
    expect(gramsLeft(lot("a", { grams: null }), { amount: 1, unit: "g" })).toBeNull();
    expect(gramsLeft(lot("a", { thousandSeedGrams: null }), { amount: 1, unit: "seeds" })).toBeNull();
  });

  it("is surely too little where even the most seeds in the jar are fewer", () => {
    // 200 g at 400 g a thousand are 500 seeds; of unweighed seed at most 4 in a gram, 800.
    expect([moreThanInJar(lot("a"), 500), moreThanInJar(lot("a"), 501)]).toEqual([false, true]);
    const unweighed = lot("a", { thousandSeedGrams: null });
    expect([moreThanInJar(unweighed, 800), moreThanInJar(unweighed, 801)]).toEqual([false, true]);
    expect(moreThanInJar(lot("a", { grams: null }), 1e9)).toBe(false);
  });

  it("of the reserve is reckoned over all good lots of the holder together", () => {
    const taken = (seeds: number) => [
      { lot: lot("a"), taken: { amount: seeds, unit: "seeds" as const } },
      { lot: lot("b"), taken: { amount: 160, unit: "g" as const } },
    ];
    // 160 g are 400 seeds: 1000 − 400 − 400 = 200 are kept, one more is not.
    expect(reservesAfter(taken(400))).toMatchObject([{ answer: "kept", left: { value: 200 }, shortBefore: false }]);
    expect(reservesAfter(taken(401))).toMatchObject([{ answer: "touched", left: { value: 199 } }]);
  });

  it("may be touched where only the span tells, and is touched where even the most are too few", () => {
    const onHand = { value: null, low: 400, high: 800, grade: "assumed" as const };
    const unweighed = lot("a", { thousandSeedGrams: null, reserve: reserve({ onHand }) });
    // 100 g are 200 to 400 seeds: 0 to 600 are left. 320 g are 640 to 1,280: 0 to 160.
    const whenTaken = (amount: number) => reservesAfter([{ lot: unweighed, taken: { amount, unit: "g" } }])[0];
    expect(whenTaken(100)).toMatchObject({ answer: "may be touched", left: { value: null, low: 0, high: 600 } });
    expect(whenTaken(320)).toMatchObject({ answer: "touched", left: { high: 160 } });
  });

  it("cannot be told without a reserve; a lot that is not counted on takes nothing from it", () => {
    const unknown = lot("a", { reserve: reserve({ seeds: null }) });
    expect(reservesAfter([{ lot: unknown, taken: { amount: 1, unit: "g" } }])[0]?.answer).toBe("cannot tell");
    expect(reservesAfter([{ lot: lot("c"), taken: { amount: 200, unit: "g" } }])[0]).toMatchObject({ answer: "kept" });
    const short = lot("a", { reserve: reserve({ onHand: { value: 150, low: 150, high: 150, grade: "counted" } }) });
    expect(reservesAfter([{ lot: short, taken: { amount: 1, unit: "seeds" } }])[0]).toMatchObject({
      shortBefore: true,
    });
  });
});

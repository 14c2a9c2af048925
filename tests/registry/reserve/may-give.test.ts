import { expect, test } from "vitest";
import { type GiveQuestion, mayGive } from "@/lib/registry/reserve/may-give";
import type { Holding } from "@/lib/registry/reserve/read-holdings";
import { reserveOfVariety } from "@/lib/registry/reserve/reserve-of-variety";

const holding = (id: string, more: Partial<Holding> = {}): Holding => ({
  id,
  number: id,
  holderId: "me",
  holder: null,
  kind: "founder",
  founderLines: null,
  status: null,
  gramsOnHand: 200,
  thousandSeedGrams: 500,
  year: null,
  yearFirst: null,
  yearLast: null,
  treatment: null,
  lastTest: { testId: "t", test: "T", date: "2026", sown: 20, normal: 18, germination: 0.9, low: 0.683, high: 0.988 },
  lastInHand: null,
  buildings: [],
  containers: [],
  ...more,
});

/** A reserve of 218 seeds (34 a sowing for 20 plants from 18 of 20). */
const reserve = (...holdings: Holding[]) =>
  reserveOfVariety({
    holderId: "me",
    holdings,
    words: [],
    varietyPlantsWanted: 20,
    cropPlantsMin: null,
    seedsPerGram: { min: 1, max: 4 },
    usualLifeYears: null,
    settings: { renewalUrgent: 0.5, confirmedYears: 3 },
    today: "2026-11-24",
  });

const question = (more: Partial<GiveQuestion> = {}): GiveQuestion => ({
  lotId: "a",
  status: null,
  grams: 200,
  openWarning: false,
  tested: true,
  likelyBelow: false,
  ...more,
});

test("what lies above the reserve may be given", () => {
  // 200 g at 500 g a thousand are 400 seeds; 400 − 218 = 182
  const verdict = mayGive(question(), reserve(holding("a")));
  expect(verdict).toMatchObject({ answer: "yes", why: "above the reserve", keptBack: 218, onlyPlace: true });
  expect(verdict.free?.value).toBe(182);
});

test("another good lot carries the reserve, and no more is given than the jar holds", () => {
  const verdict = mayGive(question({ grams: 50 }), reserve(holding("a", { gramsOnHand: 50 }), holding("b")));
  // 100 seeds here, 400 there; 500 − 218 = 282, but only 100 are in this jar
  expect([verdict.free?.value, verdict.keptBack]).toEqual([100, 0]);
});

test("below the reserve nothing is given; that it is the only place is said", () => {
  const verdict = mayGive(question({ grams: 100 }), reserve(holding("a", { gramsOnHand: 100 })));
  expect(verdict).toMatchObject({ answer: "no", why: "reserve not met", onlyPlace: true });
  expect(verdict.free?.value).toBe(0);
});

test("a span that ends on both sides of the reserve decides nothing", () => {
  // 100 g at 1 to 4 seeds a gram are 100 to 400 seeds against 218
  const lot = holding("a", { gramsOnHand: 100, thousandSeedGrams: null });
  const verdict = mayGive(question({ grams: 100 }), reserve(lot));
  expect(verdict).toMatchObject({ answer: "cannot tell", why: "reserve may not be met", keptBack: null });
  expect(verdict.free).toEqual({ value: null, low: 0, high: 182, grade: "assumed" });
});

test("what stands against giving comes before any number", () => {
  const kept = reserve(holding("a"));
  expect(mayGive(question({ status: "hold" }), kept)).toMatchObject({ answer: "no", why: "status" });
  expect(mayGive(question({ status: "discarded" }), kept)).toMatchObject({ answer: "no", why: "status" });
  expect(mayGive(question({ openWarning: true }), kept)).toMatchObject({ answer: "no", why: "warning" });
  expect(mayGive(question({ grams: 0 }), kept)).toMatchObject({ answer: "no", why: "empty" });
});

test("a test older than the usual life of the seed, or a lot likely past the line, decides nothing", () => {
  const old = { testId: "t", test: "T", date: "2000-03", sown: 20, normal: 18, germination: 0.9, low: 0.6, high: 0.99 };
  const kept = reserveOfVariety({
    holderId: "me",
    holdings: [holding("a", { lastTest: old })],
    words: [],
    varietyPlantsWanted: 20,
    cropPlantsMin: null,
    seedsPerGram: { min: 1, max: 4 },
    usualLifeYears: 4,
    settings: { renewalUrgent: 0.5, confirmedYears: 3 },
    today: "2026-11-24",
  });
  expect(kept.leftOut.map((each) => each.why)).toEqual(["tested too long ago"]);
  expect(mayGive(question(), kept)).toMatchObject({ answer: "cannot tell", why: "tested too long ago" });
  expect(mayGive(question({ likelyBelow: true }), reserve(holding("a"))).why).toBe("likely below the line");
});

test("what is not known leaves the answer open", () => {
  expect(mayGive(question({ grams: null }), reserve(holding("a", { gramsOnHand: null }))).why).toBe("amount not known");
  expect(mayGive(question({ tested: false }), reserve(holding("a", { lastTest: null })))).toMatchObject({
    answer: "cannot tell",
    why: "never tested",
  });
});

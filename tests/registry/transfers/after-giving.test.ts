import { expect, test } from "vitest";
import { afterGiving, gramsOfAmount, isEmpty } from "@/lib/registry/transfers/after-giving";

const counted = (value: number, low = value, high = value) => ({ value, low, high, grade: "counted" as const });
const jar = {
  grams: 220,
  seeds: counted(440),
  live: counted(396, 300, 435),
  thousandSeedGrams: 500,
  free: counted(222),
};

test("a quarter out leaves three quarters of the seeds and of the living ones, and what is free less the seeds taken", () => {
  // by hand: 55 of 220 g are a quarter: 330 seeds, 297 living (225 to 326.25); 110 seeds taken of 222 free leave 112
  expect(afterGiving(jar, 55)).toEqual({
    grams: 165,
    seeds: counted(330),
    live: counted(297, 225, 326.25),
    thousandSeedGrams: 500,
    free: counted(112),
    takenShare: 0.25,
  });
});

test("all of it, or more, leaves nothing", () => {
  for (const grams of [219.996, 220, 999]) {
    const left = afterGiving(jar, grams);
    expect([left.grams, left.seeds?.high, left.free?.high, left.takenShare]).toEqual([0, 0, 0, 1]);
  }
});

test("a jar is empty where its ledger says so, never where nobody knows", () => {
  // 0.005 g is what a house's scales do not show
  expect([0, 0.004, 0.005, 1].map((grams) => isEmpty(grams, null))).toEqual([true, true, false, false]);
  expect(isEmpty(null, null)).toBe(false);
  // of seed of which a thousand weigh 0.08 g, 0.004 g are fifty; half a seed is 0.00004 g
  expect([0.00003, 0.00005, 0.004].map((grams) => isEmpty(grams, 0.08))).toEqual([true, false, false]);
  expect(isEmpty(0.004, 500)).toBe(true);
});

test("a jar of unknown weight stays unknown, and so does what has no seed weight", () => {
  expect(afterGiving({ ...jar, grams: null, seeds: null }, 5)).toMatchObject({
    grams: null,
    free: null,
    takenShare: null,
  });
  expect(afterGiving({ ...jar, seeds: null, live: null }, 55)).toMatchObject({ grams: 165, seeds: null, free: null });
});

test("seeds become grams by the lot's own seed weight alone", () => {
  expect(gramsOfAmount(30, "seeds", 500)).toBe(15);
  expect(gramsOfAmount(30, "seeds", null)).toBeNull();
  expect(gramsOfAmount(30, "g", null)).toBe(30);
});

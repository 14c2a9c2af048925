import { expect, test } from "vitest";
import { liveSeeds, seedsIn } from "@/lib/registry/lots/live-seeds";

const perGram = { min: 1, max: 4 };
const test20 = { germination: 0.9, low: 0.683, high: 0.988 };

// Expected numbers are products worked by hand; 18 of 20 has the exact 95 % interval 68.3 to 98.8 % (Clopper & Pearson 1934).

test("a lot's own seed weight turns grams into seeds", () => {
  expect(seedsIn(128, 320, perGram)).toEqual({ value: 400, low: 400, high: 400, grade: "counted" });
});

test("without it the crop's usual seeds a gram give two ends and no likeliest number", () => {
  expect(seedsIn(100, null, perGram)).toEqual({ value: null, low: 100, high: 400, grade: "assumed" });
});

test("living seeds carry the interval of the test", () => {
  const seeds = seedsIn(128, 320, perGram);
  expect(liveSeeds(seeds, test20)).toEqual({ value: 360, low: 400 * 0.683, high: 400 * 0.988, grade: "counted" });
});

test("an assumed seed weight and a tested germination make one span", () => {
  const live = liveSeeds(seedsIn(100, null, perGram), test20);
  expect(live).toEqual({ value: null, low: 100 * 0.683, high: 400 * 0.988, grade: "assumed" });
});

test("never tested, never weighed, or no word of how heavy a seed is: not known, which is not none", () => {
  expect(liveSeeds(seedsIn(100, 322, perGram), null)).toBeNull();
  expect(seedsIn(null, 322, perGram)).toBeNull();
  expect(seedsIn(100, null, { min: null, max: null })).toBeNull();
});

test("an empty jar holds no living seed, tested or not; a small debt is an empty jar", () => {
  expect(liveSeeds(seedsIn(0, null, perGram), null)?.value).toBe(0);
  expect(seedsIn(-0.4, 322, perGram)?.value).toBe(0);
});

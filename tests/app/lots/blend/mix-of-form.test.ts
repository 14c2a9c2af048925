import { describe, expect, it } from "vitest";
import { amountsFor, mostLivingSeeds } from "@/app/lots/blend/_mix/fill-amounts";
import { livingOf, partsOfForm, sharesOf, sumOfParts } from "@/app/lots/blend/_mix/mix-of-form";
import { metricUnits } from "@/lib/display/units";
import { aCandidate } from "./a-candidate";

const reading = { units: metricUnits, usualLifeYears: 4, today: "2026-11-27" };
const light = aCandidate("Light", { thousandSeedGrams: 250 });
const heavy = aCandidate("Heavy");
const untested = aCandidate("Untested", { test: null });
const lots = [light, heavy, untested];

describe("what the fields come to, by hand", () => {
  it("50 g at 250 g a thousand are 200 seeds, 160 alive; 50 seeds at 500 are 25 g, 40 alive: 4 to 1", () => {
    const values = {
      "in.Light": "yes",
      "amount.Light": "50",
      "in.Heavy": "yes",
      "amount.Heavy": "50",
      "unit.Heavy": "seeds",
    };
    const parts = partsOfForm(lots, values, reading);
    expect(parts.map((part) => part.amount)).toEqual([
      { grams: 50, seeds: 200 },
      { grams: 25, seeds: 50 },
    ]);
    expect(parts.map((part) => part.left)).toEqual([50, 75]);
    expect(sharesOf(parts)).toEqual([0.8, 0.2]);
    const sum = sumOfParts(parts);
    expect(sum).toMatchObject({ grams: 75, seeds: 250, thousandSeedGrams: 300 });
    expect(sum.live).toMatchObject({ value: 200, low: 165, grade: "counted" });
  });

  it("what is missing is not guessed", () => {
    const without = partsOfForm(lots, { "in.Light": "yes", "in.Heavy": "yes", "amount.Heavy": "about ten" }, reading);
    expect(without.map((part) => part.amount)).toEqual([null, null]);
    expect(sharesOf(without)).toBeNull();
    expect(sumOfParts(without)).toMatchObject({ grams: null, live: null });
    const unweighed = aCandidate("Unweighed", { thousandSeedGrams: null });
    expect(partsOfForm([unweighed], { "in.Unweighed": "yes", "amount.Unweighed": "5" }, reading)[0]?.amount).toBeNull();
    expect(partsOfForm(lots, {}, reading)).toEqual([]);
  });

  it("of an untested lot the word of a person counts, as an assumption; a test too old is one too", () => {
    expect(livingOf(untested, {}, reading)).toBeNull();
    expect(livingOf(untested, { "living.Untested": "75 %" }, reading)).toEqual({
      share: 0.75,
      low: 0.75,
      high: 0.75,
      grade: "assumed",
    });
    expect(livingOf(untested, { "living.Untested": "0" }, reading)).toBeNull();
    expect(livingOf(heavy, { "living.Heavy": "10" }, reading)).toMatchObject({ share: 0.8, grade: "counted" });
    expect(livingOf(heavy, {}, { ...reading, today: "2031-01-01" })?.grade).toBe("assumed");
  });
});

describe("amounts that make a mix", () => {
  const living = { share: 0.8, low: 0.66, high: 0.9, grade: "counted" as const };
  const wanted = [
    { lot: light, living, share: 0.25 },
    { lot: heavy, living, share: 0.75 },
  ];

  it("the jar that is used up first decides: half of 200 seeds, 80 alive, are three quarters of 106 and two thirds", () => {
    // light: half of 400 seeds, 160 alive, would do for 640
    expect(mostLivingSeeds(wanted, 0.5)).toBeCloseTo(80 / 0.75, 9);
    expect(mostLivingSeeds([{ lot: aCandidate("Unknown", { grams: null }), living, share: 1 }], 0.5)).toBeNull();
    expect(mostLivingSeeds([], 0.5)).toBeNull();
  });

  it("100 living seeds: 25 of the light lot are 31.25 seeds and 7.81 g, 75 of the heavy one 93.75 seeds and 46.9 g", () => {
    expect(amountsFor(wanted, 100, metricUnits)).toEqual({
      ...{ "in.Light": "yes", "unit.Light": "g", "amount.Light": "7.81" },
      ...{ "in.Heavy": "yes", "unit.Heavy": "g", "amount.Heavy": "46.9" },
    });
  });

  it("is written in the steward's unit, and read back as what it was", () => {
    const ounces = { weight: "oz" as const, length: "ft" as const, temperature: "F" as const };
    const filled = amountsFor(wanted, 100, ounces);
    expect(partsOfForm(lots, filled, { ...reading, units: ounces })[0]?.amount?.grams).toBeCloseTo(7.81, 3);
  });
});

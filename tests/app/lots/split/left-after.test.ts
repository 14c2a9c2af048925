import { expect, it } from "vitest";
import { leftAfter } from "@/app/lots/[id]/split/left-after";
import { metricUnits } from "@/lib/display/units";

const jar = { id: "l", grams: 100, thousandSeedGrams: 500, holder: "Oda Fenlight" };
const onHand = { value: 300, low: 300, high: 300, grade: "counted" as const };
const kept = { seeds: 250, onHand, uncounted: 0 };
const after = (values: Record<string, string>, counted = true, held: typeof kept | null = kept) =>
  leftAfter(jar, counted, held, values, metricUnits);

it("30 g are 60 seeds: 70 g and 240 seeds stay, less than the 250 kept back", () => {
  expect(after({ amount: "30", unit: "g" })).toMatchObject({
    ...{ grams: 30, left: 70, reserveKept: "no" },
    onHand: { value: 240, low: 240, high: 240 },
  });
  expect(after({ amount: "40", unit: "seeds" })).toMatchObject({ grams: 20, left: 80, reserveKept: "yes" });
});

it("a jar that was not counted on takes nothing from the reserve", () => {
  expect(after({ amount: "100", unit: "g" }, false)).toMatchObject({
    left: 0,
    reserveKept: "yes",
    onHand: { value: 300 },
  });
});

it("where a good lot is uncounted, less than the reserve cannot be told", () => {
  expect(after({ amount: "30" }, true, { ...kept, uncounted: 1 }).reserveKept).toBe("cannot tell");
});

it("nothing is said while nothing is typed, too much is typed, or nothing is known to keep back", () => {
  expect(after({})).toEqual({ grams: null, left: null, onHand: null, reserveKept: null });
  expect(after({ amount: "a pinch" }).left).toBeNull();
  expect(after({ amount: "120" })).toMatchObject({ left: -20, reserveKept: null });
  expect(after({ amount: "30" }, true, null)).toMatchObject({ left: 70, reserveKept: null });
  const unweighed = { ...jar, thousandSeedGrams: null };
  expect(leftAfter(unweighed, true, kept, { amount: "30", unit: "seeds" }, metricUnits).grams).toBeNull();
  expect(leftAfter(unweighed, true, kept, { amount: "30", unit: "g" }, metricUnits)).toMatchObject({
    ...{ grams: 30, left: 70, reserveKept: "cannot tell" },
  });
});

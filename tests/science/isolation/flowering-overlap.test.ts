import { describe, expect, it } from "vitest";
import { type FloweringOverlapInput, floweringOverlap } from "@/lib/science/isolation/flowering-overlap";
import { normalOverlap } from "@/lib/science/isolation/normal-overlap";
import { synchronyRatio } from "@/lib/science/isolation/synchrony-ratio";
import { answered, CLOSED_FORM, expectAgreement, pathsOf, referenceCases } from "../agreement";
import { isolationCases } from "./isolation-cases";

const peak = (day: number, sd = 2) => ({ peak: day, sd });

describe("the shared cases", () => {
  it.each(isolationCases("overlapNormal"))("$name", ({ input, expected, tolerance }) => {
    const { mean1, sd1, mean2, sd2 } = input as Record<"mean1" | "sd1" | "mean2" | "sd2", number>;
    const given = normalOverlap(peak(mean1, sd1), peak(mean2, sd2));
    expect(Math.abs(given - (expected as number))).toBeLessThanOrEqual(tolerance.abs ?? 0);
  });

  it.each(isolationCases("syncRatio"))("$name", ({ input, expected, tolerance }) => {
    const { deltaDays, sdPollen, sdStigma } = input as Record<"deltaDays" | "sdPollen" | "sdStigma", number>;
    const given = synchronyRatio(peak(deltaDays, sdPollen), peak(0, sdStigma));
    expect(Math.abs(given - (expected as number))).toBeLessThanOrEqual(tolerance.abs ?? 0);
  });
});

it("late stigmas meet little pollen of their own: 3.9 % where the simple ratio says 2.1 % (the reference's worked figures)", () => {
  // ρ 0.1; our pollen five days before our stigmas would be late silks; here the foreign pollen is five days late
  const { share, synchrony } = answered(
    floweringOverlap({ stigma: peak(0), ownPollen: peak(0), foreignPollen: peak(5), loadRatio: 0.1 }),
  );
  expect(0.1 * synchrony).toBeCloseTo(0.021, 3);
  expect(share).toBeCloseTo(0.039, 3);
});

it("two windows that are the same overlap wholly, and days far apart not at all", () => {
  const same = { first: 180, last: 190 };
  const whole = answered(floweringOverlap({ stigma: same, ownPollen: same, foreignPollen: same }));
  expect(whole).toMatchObject({ overlap: 1, synchrony: 1, daysApart: 0, share: null });
  const far = answered(floweringOverlap({ stigma: same, ownPollen: same, foreignPollen: peak(400, 1), loadRatio: 1 }));
  expect(far.overlap).toBeLessThan(1e-12);
  expect(far.share).toBeLessThan(1e-12);
});

it("agrees with quadrature of 30 digits: the closed forms to 1e-9, the share to 1e-6", () => {
  for (const { input, expected } of referenceCases<FloweringOverlapInput>("flowering-overlap")) {
    const { share, ...closed } = expected as { share: number | null };
    const given = answered(floweringOverlap(input));
    expectAgreement(given, closed, CLOSED_FORM);
    expectAgreement({ share: given.share }, { share }, { relative: 1e-6, absolute: 1e-12 });
  }
});

it("spreads that are nearly alike keep their digits", () => {
  const alike = normalOverlap(peak(0, 2), peak(5, 2));
  expect(normalOverlap(peak(0, 2), peak(5, 2 + 1e-9))).toBeCloseTo(alike, 8);
  expect(normalOverlap(peak(0, 3), peak(0, 3.0000001))).toBeCloseTo(1, 6);
});

it("says what it took for granted, each once", () => {
  const window = { first: 180, last: 190 };
  const given = answered(
    floweringOverlap({ stigma: window, ownPollen: window, foreignPollen: { ...window, peak: 183 } }),
  );
  expect(given.assumed.map(({ code }) => code)).toEqual(["spread-of-window", "peak-in-the-middle", "spread-of-window"]);
  expect(answered(floweringOverlap({ stigma: peak(1), ownPollen: peak(1), foreignPollen: peak(2) })).assumed).toEqual(
    [],
  );
});

it("a spread of nothing, a last day before the first, a peak outside and pollen below nothing are refused", () => {
  const good = { stigma: peak(1), ownPollen: peak(1), foreignPollen: peak(1) };
  expect(pathsOf(floweringOverlap({ ...good, stigma: peak(1, 0) }))).toEqual([["stigma", "sd"]]);
  expect(pathsOf(floweringOverlap({ ...good, ownPollen: { first: 9, last: 9 } }))).toEqual([["ownPollen", "last"]]);
  expect(pathsOf(floweringOverlap({ ...good, foreignPollen: { first: 1, last: 9, peak: 12 } }))).toEqual([
    ["foreignPollen", "peak"],
  ]);
  expect(pathsOf(floweringOverlap({ ...good, loadRatio: -1 }))).toEqual([["loadRatio"]]);
});

it("days of no season and spreads of next to nothing are refused, which integrals over them would never end on", () => {
  const good = { stigma: peak(1), ownPollen: peak(1), foreignPollen: peak(1), loadRatio: 0.1 };
  const at = (more: Partial<FloweringOverlapInput>) => pathsOf(floweringOverlap({ ...good, ...more }));
  expect(at({ stigma: { first: 1e308, last: 204 } })).toContainEqual(["stigma", "first"]);
  expect(at({ ownPollen: { first: -1e308, last: 202 } })).toEqual([["ownPollen", "first"]]);
  expect(at({ foreignPollen: peak(1, 1e-9) })).toEqual([["foreignPollen", "sd"]]);
  expect(at({ foreignPollen: peak(1, 1e9) })).toEqual([["foreignPollen", "sd"]]);
  expect(floweringOverlap({ ...good, stigma: { first: 0, last: 1_000_000 } }).ok).toBe(true);
  expect(floweringOverlap({ ...good, stigma: peak(1, 1e-6), foreignPollen: peak(1, 1_000_000) }).ok).toBe(true);
});

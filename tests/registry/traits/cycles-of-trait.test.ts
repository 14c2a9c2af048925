import { expect, it } from "vitest";
import { cyclesOfTrait } from "@/lib/registry/traits/cycles-of-trait";
import type { PointOfTrait } from "@/lib/registry/traits/trait-over-years";
import type { TraitYears } from "@/lib/science/trait-years/trait-years";

const point = (id: string, year: number, differential: number | null) =>
  ({ ...{ id, name: id, year, differential } }) as unknown as PointOfTrait;
const years = (differences: Readonly<Record<number, number>>) =>
  ({
    years: Object.entries(differences).map(([year, difference]) => ({
      year: Number(year),
      toCheck: { difference, standardError: 0.1 },
    })),
    trend: null,
    assumed: [],
  }) as unknown as TraitYears;
const outcrosser = {
  matingSystem: "outcrossing",
  selfIncompatible: null,
  outcrossingPctMin: 90,
  outcrossingPctMax: 100,
};

// a was harvested into lot 1, given on as lot 2, sown as b; b's lot 3 was sown as c.
const seed = {
  from: [
    { growOutId: "b", lotId: "2" },
    { growOutId: "c", lotId: "3" },
  ],
  lots: [
    { id: "1", growOutId: "a", parentLotId: null },
    { id: "2", growOutId: null, parentLotId: "1" },
    { id: "3", growOutId: "b", parentLotId: null },
  ],
};
const points = [point("a", 2001, 4), point("b", 2008, 6), point("c", 2015, null)];

it("three that follow one another: S 2 and 5, R 1 and 2, by hand h² 12/29, t of one degree 12.706 times 1/29", () => {
  const { growOuts, found, span, control } = cyclesOfTrait(
    points,
    years({ 2001: 0, 2008: 1, 2015: 2 }),
    seed,
    outcrosser,
  );
  expect(growOuts.map(({ name }) => name)).toEqual(["a", "b", "c"]);
  expect(control).toBe(0.5);
  expect(found?.heritability).toBeCloseTo(12 / 29, 12);
  // residuals 5/29 and −2/29: √((25 + 4)/29² / 29) = 1/29
  expect(found?.standardError).toBeCloseTo(1 / 29, 12);
  expect(span?.low).toBeCloseTo(12 / 29 - 12.7062047362 / 29, 8);
  expect(span?.high).toBeCloseTo(12 / 29 + 12.7062047362 / 29, 8);
});

it("a year without the check, or a grow-out of which nobody knows what was kept, ends the run: no figure", () => {
  const gap = cyclesOfTrait(points, years({ 2001: 0, 2015: 2 }), seed, outcrosser);
  expect(gap).toMatchObject({ found: null, span: null });
  expect(gap.growOuts).toHaveLength(1);
  const blind = [point("a", 2001, 4), point("b", 2008, null), point("c", 2015, null)];
  expect(cyclesOfTrait(blind, years({ 2001: 0, 2008: 1, 2015: 2 }), seed, outcrosser).found).toBeNull();
});

it("a selfing crop's seed parents weigh more", () => {
  const selfing = { ...outcrosser, matingSystem: "selfing", outcrossingPctMin: 0, outcrossingPctMax: 10 };
  // s = 1 − 10/200 = 0.95
  expect(cyclesOfTrait(points, years({ 2001: 0, 2008: 1, 2015: 2 }), seed, selfing).control).toBeCloseTo(0.975, 12);
});

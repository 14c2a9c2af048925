import { expect, it } from "vitest";
import { traitYears } from "@/lib/science/trait-years/trait-years";
import { answered, pathsOf } from "../agreement";

// Two plants a year about each mean, one below and one above: their mean is the mean, by hand.
const about = (mean: number) => [mean - 1, mean + 1];
const variety = [62, 71, 58, 66];
const check = [60, 70, 60, 69];
const years = [2001, 2008, 2015, 2024];

it("the weather hid a decline: the means go up and down, the differences 2 1 −2 −3 fall each time (worked by hand)", () => {
  const told = answered(
    traitYears({
      years: years.map((year, at) => ({ year, values: about(variety[at] ?? 0), check: about(check[at] ?? 0) })),
    }),
  );
  expect(told.years.map(({ mean }) => mean)).toEqual(variety);
  expect(told.years.map(({ toCheck }) => toCheck?.difference)).toEqual([2, 1, -2, -3]);
  // s² = 2 in every pair: √(2/2 + 2/2)
  expect(told.years[0]?.toCheck?.standardError).toBeCloseTo(Math.SQRT2, 12);
  expect(told.trend).toMatchObject({ s: -6 });
  expect(told.trend?.pValue).toBeCloseTo(2 / 24, 12);
  // slopes: −1/7, −4/14, −5/23, −3/7, −4/16, −1/9; the middle two are −5/23 and −4/16
  expect(told.trend?.slope).toBeCloseTo(-(5 / 23 + 4 / 16) / 2, 12);
  expect(told.assumed.map(({ code }) => code)).toEqual(["check-unchanged"]);
});

it("without a check, or with three years of one, tells no trend", () => {
  const bare = answered(traitYears({ years: years.map((year, at) => ({ year, values: about(variety[at] ?? 0) })) }));
  expect(bare).toMatchObject({ trend: null, assumed: [] });
  const three = years.map((year, at) => ({
    year,
    values: about(variety[at] ?? 0),
    ...(at < 3 ? { check: about(check[at] ?? 0) } : {}),
  }));
  expect(answered(traitYears({ years: three })).trend).toBeNull();
});

it("refuses a year twice, one without a plant, and what is no number", () => {
  const twice = traitYears({
    years: [
      { year: 2001, values: [1] },
      { year: 2001, values: [2] },
    ],
  });
  expect(pathsOf(twice)).toEqual([["years", 1, "year"]]);
  expect(pathsOf(traitYears({ years: [{ year: 2001, values: [] }] }))).toEqual([["years", 0, "values"]]);
  const odd = traitYears({ years: [{ year: 2001, values: [1], check: [Number.NaN] }] });
  expect(pathsOf(odd)).toEqual([["years", 0, "check", 0]]);
  expect(pathsOf(traitYears({ years: [] }))).toEqual([["years"]]);
});

import { describe, expect, it } from "vitest";
import { rankTrend } from "@/lib/science/trait-years/rank-trend";
import { answered, pathsOf } from "../agreement";

const series = (years: readonly number[], values: readonly number[]) =>
  years.map((year, at) => ({ year, value: values[at] ?? 0 }));

describe("a trend by ranks (p by trying every order in Python, slopes by SciPy's theilslopes)", () => {
  it("five years that fall but for one: S −8, p 2·5/120", () => {
    const trend = answered(rankTrend(series([1990, 1998, 2006, 2014, 2022], [78, 74, 75, 71, 69])));
    expect(trend.s).toBe(-8);
    expect(trend.pValue).toBeCloseTo(0.0833333333, 9);
    expect(trend.slope).toBeCloseTo(-0.265625, 12);
  });

  it("six years at uneven distances: S 9, p 0.1361", () => {
    const trend = answered(rankTrend(series([2001, 2003, 2004, 2010, 2015, 2016], [5, 3, 4, 7, 6, 9])));
    expect(trend.s).toBe(9);
    expect(trend.pValue).toBeCloseTo(0.1361111111, 9);
    expect(trend.slope).toBeCloseTo(0.2666666667, 9);
  });

  it("four years that all fall cannot be surer than 2/24", () => {
    expect(answered(rankTrend(series([2001, 2008, 2015, 2024], [2, 1, -2, -3]))).pValue).toBeCloseTo(2 / 24, 12);
  });

  it("has no p where two years have one value", () => {
    expect(answered(rankTrend(series([1, 2, 3, 4], [5, 5, 6, 7]))).pValue).toBeNull();
  });
});

it("refuses three years, and a year twice", () => {
  expect(pathsOf(rankTrend(series([1, 2, 3], [1, 2, 3])))).toEqual([["years"]]);
  expect(pathsOf(rankTrend(series([1, 2, 2, 3], [1, 2, 3, 4])))).toEqual([["years"]]);
});

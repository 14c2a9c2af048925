import { expect, it } from "vitest";
import { strokes, type YearPoint, yearTicks } from "@/components/charts/points";

const point = (year: number, value: number | null, grade: YearPoint["grade"] = "counted"): YearPoint => ({
  year,
  value,
  grade,
  words: `${year}`,
});

it("neighbouring values are joined in the order of the years, and none across an unknown", () => {
  const joined = strokes([point(2004, 0.8), point(1995, 0.9), point(1999, null, "unknown"), point(2008, 0.7)]);
  expect(joined.map((stroke) => [stroke.from.year, stroke.to.year])).toEqual([[2004, 2008]]);
});

it("a stroke is dashed where either end was assumed", () => {
  const joined = strokes([
    point(1995, 0.9),
    point(1999, 0.8, "assumed"),
    point(2004, 0.8, "assumed"),
    point(2008, 0.7),
  ]);
  expect(joined.map((stroke) => stroke.dashed)).toEqual([true, true, true]);
  expect(strokes([point(1995, 0.9), point(1999, 0.8)])[0]?.dashed).toBe(false);
});

it("the axis shows whole years, evenly apart, no more than there is room for", () => {
  expect(yearTicks(1995.1, 2019.2, 7)).toEqual([1995, 2000, 2005, 2010, 2015, 2020]);
  expect(yearTicks(2001, 2003, 7)).toEqual([2001, 2002, 2003]);
  expect(yearTicks(1994, 1994, 7)).toEqual([1994]);
  expect(yearTicks(1900, 2020, 7).length).toBeLessThanOrEqual(7);
});

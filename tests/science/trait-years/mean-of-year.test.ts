import { expect, it } from "vitest";
import { twoSidedStudent } from "@/lib/science/distributions/student";
import { differenceToCheck } from "@/lib/science/trait-years/difference-to-check";
import { meanOfYear } from "@/lib/science/trait-years/mean-of-year";

// By SciPy: stats.t.ppf(0.975, d)
it.each([
  [1, 12.7062047362],
  [2, 4.3026527297],
  [9, 2.2621571628],
  [39, 2.02269092],
])("Student's t with %i degrees", (degrees, t) => {
  expect(twoSidedStudent(0.05, degrees)).toBeCloseTo(t, 8);
});

it("six plants (SciPy: t.interval and quantile)", () => {
  const year = meanOfYear([62, 58, 71, 66, 60, 64.5]);
  expect(year?.mean).toBeCloseTo(63.5833333333, 9);
  expect(year?.sd).toBeCloseTo(4.6520604754, 9);
  expect(year?.interval?.low).toBeCloseTo(58.7012952716, 7);
  expect(year?.interval?.high).toBeCloseTo(68.4653713952, 7);
  expect(year?.quarters).toEqual([58, 60.5, 63.25, 65.625, 71]);
});

it("one plant has no interval, none has no mean", () => {
  expect(meanOfYear([7])).toMatchObject({ plants: 1, mean: 7, sd: null, interval: null });
  expect(meanOfYear([])).toBeNull();
});

it("the difference to a check carries the doubt of both: √(36/40 + 64/20) by hand", () => {
  const of = (plants: number, mean: number, sd: number) => ({
    ...{ plants, mean, sd, interval: null },
    quarters: [0, 0, 0, 0, 0] as const,
  });
  const found = differenceToCheck(of(40, 62, 6), of(20, 60, 8));
  expect(found?.difference).toBe(2);
  expect(found?.standardError).toBeCloseTo(2.0248456731, 9);
  expect(differenceToCheck(of(40, 62, 6), { ...of(1, 60, 0), sd: null })).toBeNull();
});

import { expect, it } from "vitest";
import { harmonicMeanSize } from "@/lib/science/effective-size/harmonic-mean-size";

const points = (...sizes: number[]) => harmonicMeanSize(sizes.map((size) => ({ low: size, high: size })));

it("grow-outs of different size come to their harmonic mean (printed: 30.8, 91.7, moths 5,374)", () => {
  expect(points(10, 100, 50, 80, 20, 500)?.low).toBeCloseTo(30.848, 3);
  expect(points(10, ...new Array<number>(9).fill(1000))?.low).toBeCloseTo(91.743, 3);
  expect(points(11_000, 2_000, 11_000, 16_000)?.high).toBeCloseTo(5374.05, 2);
});

it("a span goes from the worst of each to the best of each; an end without bound adds nothing", () => {
  // worst 2/(1/10 + 1/20) = 13.33; best 2/(1/30 + 1/20) = 24; with one end open 2/(1/20) = 40
  const known = { low: 20, high: 20 };
  const span = harmonicMeanSize([{ low: 10, high: 30 }, known]);
  expect(span?.low).toBeCloseTo(40 / 3, 12);
  expect(span?.high).toBeCloseTo(24, 12);
  expect(harmonicMeanSize([{ low: 10, high: null }, known])?.high).toBeCloseTo(40, 12);
});

it("no grow-out has no size, and what nothing bounds has no upper end", () => {
  expect(harmonicMeanSize([])).toBeNull();
  expect(harmonicMeanSize([{ low: 4, high: null }])).toEqual({ low: 4, high: null });
});

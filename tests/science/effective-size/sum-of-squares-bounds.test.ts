import { expect, it } from "vitest";
import { sumOfSquaresBounds } from "@/lib/science/effective-size/sum-of-squares-bounds";
import { answered, pathsOf } from "../agreement";

it("12 plants, the largest 0.3: from 0.09 + 0.49/11 to 3·0.09 + 0.01 (a random search came to 0.1353 and 0.2784)", () => {
  const { min, max } = answered(sumOfSquaresBounds({ plants: 12, largest: 0.3 }));
  expect(min).toBeCloseTo(0.13454545454545452, 12);
  expect(max).toBeCloseTo(0.28, 12);
});

it("a largest share of 1/n leaves one case: all alike", () => {
  const { min, max } = answered(sumOfSquaresBounds({ plants: 10, largest: 0.1 }));
  expect(min).toBeCloseTo(0.1, 12);
  expect(max).toBeCloseTo(0.1, 12);
});

it("a single plant gave everything", () => {
  expect(answered(sumOfSquaresBounds({ plants: 1, largest: 1 }))).toEqual({ min: 1, max: 1 });
});

it("refuses a largest share below an even one, above 1, and a part of a single plant's", () => {
  for (const [plants, largest] of [
    [10, 0.09],
    [10, 1.1],
    [1, 0.5],
  ] as const)
    expect(pathsOf(sumOfSquaresBounds({ plants, largest }))).toEqual([["largest"]]);
  expect(pathsOf(sumOfSquaresBounds({ plants: 0, largest: 1 }))).toEqual([["plants"]]);
});

import { expect, it } from "vitest";
import { curveAssumed, floweringCurve } from "@/lib/science/isolation/flowering-curve";
import { answered, pathsOf } from "../agreement";

// by hand: 10 to 20 July are ten days, a quarter of them 2.5, the middle the 15th
it("first and last day give a curve: its peak in the middle unless seen, its spread a quarter of the days between", () => {
  expect(answered(floweringCurve({ first: 10, last: 20 }, []))).toEqual({ peak: 15, sd: 2.5 });
  expect(answered(floweringCurve({ first: 10, last: 20, peak: 13 }, []))).toEqual({ peak: 13, sd: 2.5 });
  expect(answered(floweringCurve({ peak: 13, sd: 2 }, []))).toEqual({ peak: 13, sd: 2 });
});

it("what was taken for granted is said", () => {
  expect(curveAssumed({ first: 1, last: 5 }, "silk").map(({ code }) => code)).toEqual([
    "spread-of-window",
    "peak-in-the-middle",
  ]);
  expect(curveAssumed({ peak: 1, sd: 1 }, "silk")).toEqual([]);
});

it("a window of one day, one that is turned round and a peak outside it are refused at their place", () => {
  expect(pathsOf(floweringCurve({ first: 5, last: 5 }, ["silk"]))).toEqual([["silk", "last"]]);
  expect(pathsOf(floweringCurve({ first: 9, last: 5 }, ["silk"]))).toEqual([["silk", "last"]]);
  expect(pathsOf(floweringCurve({ first: 1, last: 5, peak: 6 }, ["silk"]))).toEqual([["silk", "peak"]]);
  expect(pathsOf(floweringCurve({ peak: Number.NaN, sd: -1 }, ["silk"]))).toEqual([
    ["silk", "peak"],
    ["silk", "sd"],
  ]);
});

import { expect, it } from "vitest";
import { roundValues } from "@/components/charts/round-values";

it("marks round values", () => {
  expect(roundValues(0, 104, 5)).toEqual([0, 50, 100]);
  expect(roundValues(-0.2, 1.9, 4)).toEqual([0, 1]);
  expect(roundValues(0, 1, 5)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
});

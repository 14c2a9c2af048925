import { expect, it } from "vitest";
import { jeffreysInterval } from "@/lib/science/binomial/jeffreys-interval";

it("18 of 20 lies within 0.71614674 to 0.97862751 (an independent program)", () => {
  const { low, high } = jeffreysInterval(18, 20, 0.95);
  expect(low).toBeCloseTo(0.71614674, 8);
  expect(high).toBeCloseTo(0.97862751, 8);
});

it("none and all end exactly at 0 and 1", () => {
  expect(jeffreysInterval(0, 20, 0.95).low).toBe(0);
  expect(jeffreysInterval(20, 20, 0.95).high).toBe(1);
});

it("half of the seeds lie as far from ½ on either side", () => {
  const { low, high } = jeffreysInterval(25, 50, 0.8);
  expect(low + high).toBeCloseTo(1, 12);
});

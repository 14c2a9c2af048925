import { expect, it } from "vitest";
import { kappaInterval } from "@/lib/science/scoring/kappa-interval";

it("by hand: 0.649 ± 1.96 · 0.048", () => {
  const { low, high } = kappaInterval(0.649, 0.048);
  expect(low).toBeCloseTo(0.555, 3);
  expect(high).toBeCloseTo(0.743, 3);
});

it("ends where a kappa ends", () => {
  expect(kappaInterval(0.98, 0.05).high).toBe(1);
  expect(kappaInterval(-0.95, 0.2).low).toBe(-1);
});

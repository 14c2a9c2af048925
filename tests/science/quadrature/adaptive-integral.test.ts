import { expect, it } from "vitest";
import { adaptiveIntegral } from "@/lib/science/quadrature/adaptive-integral";

it("smooth, steep and broken functions are integrated to their closed values", () => {
  expect(adaptiveIntegral(Math.exp, 0, 1)).toBeCloseTo(Math.E - 1, 12);
  // ∫ 1/(1 + e^(−1000 t)) from −1 to 1 is 1, by symmetry
  expect(adaptiveIntegral((t) => 1 / (1 + Math.exp(-1000 * t)), -1, 1, [0])).toBeCloseTo(1, 10);
  // ∫ |t − 0.3| from 0 to 1 = (0.09 + 0.49)/2
  expect(adaptiveIntegral((t) => Math.abs(t - 0.3), 0, 1)).toBeCloseTo(0.29, 9);
});

it("cuts outside the bounds do nothing, and nothing lies between a bound and itself", () => {
  expect(adaptiveIntegral((t) => t, 0, 2, [-1, 5])).toBeCloseTo(2, 12);
  expect(adaptiveIntegral(Math.exp, 3, 3)).toBe(0);
});

it("what is not finite somewhere has no integral, and is not halved without end", () => {
  expect(adaptiveIntegral((t) => (t > 0.5 ? Number.NaN : t), 0, 1)).toBeNaN();
  expect(adaptiveIntegral((t) => 1 / Math.abs(t - 0.5) ** 400, 0, 1)).toBe(Number.POSITIVE_INFINITY);
});

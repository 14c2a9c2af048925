import { expect, it } from "vitest";
import { traitDifference, traitDifferenceSpan } from "@/lib/display/trait-difference";

const cm = { unit: "cm", share: false, scale: null };

it("carries its sign and the trait's own unit", () => {
  expect(traitDifference(8.24, cm)).toBe("+8.2\u00a0cm");
  expect(traitDifference(-0.426, { ...cm, unit: null })).toBe("−0.43");
  expect(traitDifference(0, cm)).toBe("0\u00a0cm");
  expect(traitDifference(0.6, { unit: null, share: false, scale: [1, 9] })).toBe("+0.6\u00a0points");
  expect(traitDifference(0.124, { unit: null, share: true, scale: null })).toBe("+12\u00a0in 100 plants");
});

it("a span has its unit once, and ends that read alike stand once", () => {
  expect(traitDifferenceSpan(0.4, 1.6, cm)).toBe("+0.4 to +1.6\u00a0cm");
  expect(traitDifferenceSpan(1.6, 1.6, cm)).toBe("+1.6\u00a0cm");
});

import { expect, it } from "vitest";
import { normalLogarithms } from "@/lib/science/distributions/normal-logarithms";

// SciPy 1.17: special.log_ndtr
it.each([
  [-1000, -500007.8266948121],
  [-31, -484.8539636271794],
  [-5, -15.064998393988727],
  [0, -Math.LN2],
  [3, -0.001350809964748202],
])("ln Φ(%d) is %d", (u, expected) => {
  expect(normalLogarithms(u).below).toBeCloseTo(expected, 9);
  expect(normalLogarithms(-u).above).toBeCloseTo(expected, 9);
});

it("the series of the far tail joins the near one without a step", () => {
  const [near, far] = [normalLogarithms(-30), normalLogarithms(-30 - 1e-9)];
  expect(far.below - near.below).toBeCloseTo(-30e-9, 7);
});

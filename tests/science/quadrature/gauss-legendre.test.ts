import { expect, it } from "vitest";
import { bellBounds } from "@/lib/science/quadrature/bell-bounds";
import { gaussLegendre, panelPoints } from "@/lib/science/quadrature/gauss-legendre";

it("three points lie at 0 and ±√0.6 with weights 8/9 and 5/9 (Abramowitz & Stegun 25.4.29)", () => {
  const [first, middle] = gaussLegendre(3);
  expect(first?.x).toBeCloseTo(Math.sqrt(0.6), 15);
  expect(first?.weight).toBeCloseTo(5 / 9, 15);
  expect(middle?.x).toBeCloseTo(0, 15);
  expect(middle?.weight).toBeCloseTo(8 / 9, 15);
});

it("panels integrate e^x from 0 to 3 to e³ − 1", () => {
  const sum = panelPoints(0, 3, 2).reduce((total, { x, weight }) => total + weight * Math.exp(x), 0);
  expect(sum).toBeCloseTo(Math.exp(3) - 1, 12);
});

it("a normal bell is held within ±√80 of its top, or within the bounds that it may not leave", () => {
  const [low, high] = bellBounds((x) => -(x * x) / 2, 0, 1, [-100, 3]);
  expect(low).toBeCloseTo(-Math.sqrt(80), 1);
  expect(high).toBe(3);
});

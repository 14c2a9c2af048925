import { expect, it } from "vitest";
import { fisherExact } from "@/lib/science/germination/fisher-exact";
import { likelyCounts } from "@/lib/science/germination/likely-counts";
import { newcombeInterval } from "@/lib/science/germination/newcombe-interval";

it("Fisher's tea: 3 of 4 against 1 of 4 is 34/70", () => {
  expect(fisherExact(3, 4, 1, 4)).toBeCloseTo(34 / 70, 14);
});

it("47 of 50 and 40 of 50 is 0.07130815 (an independent program)", () => {
  expect(fisherExact(47, 50, 40, 50)).toBeCloseTo(0.07130815, 8);
});

it("large counts keep their digits: 9,000 of 10,000 and 8,900 of 10,000 (SciPy 1.17: 0.0223788748)", () => {
  expect(fisherExact(9000, 10_000, 8900, 10_000)).toBeCloseTo(0.0223788748, 9);
});

it("a difference beyond all numbers has chance 0, equal results have 1", () => {
  expect(fisherExact(0, 1_000_000, 1_000_000, 1_000_000)).toBe(0);
  expect(fisherExact(0, 10, 0, 10)).toBe(1);
});

it("Newcombe's method 10: 56 of 70 less 48 of 80 within 0.0524 to 0.3339", () => {
  const { low, high } = newcombeInterval(48, 80, 56, 70, 0.95);
  expect([low.toFixed(4), high.toFixed(4)]).toEqual(["0.0524", "0.3339"]);
});

it("likely counts leave out nothing that can be, in a small test", () => {
  expect(likelyCounts(20, 10, 17)).toEqual({ from: 7, to: 10 });
  expect(likelyCounts(40, 10, 3)).toEqual({ from: 0, to: 3 });
});

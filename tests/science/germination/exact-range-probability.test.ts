import { expect, it } from "vitest";
import { exactRangeProbability } from "@/lib/science/germination/exact-range-probability";

// whole-number arithmetic by an independent program
it.each([
  [2, 10, 17, 3, 0.21052632],
  [2, 25, 45, 5, 0.05015198],
])("%d × %d with %d germinated differ by %d or more with chance %d", (k, n, total, range, chance) => {
  expect(exactRangeProbability(k, n, total, range)).toBeCloseTo(chance, 8);
});

it("8 × 50 with 360 germinated tolerate a range of 10 seeds: 11 are too many", () => {
  expect(exactRangeProbability(8, 50, 360, 11)).toBeLessThanOrEqual(0.025);
  expect(exactRangeProbability(8, 50, 360, 10)).toBeGreaterThan(0.025);
});

it("all replicates differ by 0 or more", () => {
  expect(exactRangeProbability(4, 100, 365, 0)).toBe(1);
});

it("a range that cannot be has no chance: both of 2 × 10 must share an odd total unevenly", () => {
  expect(exactRangeProbability(2, 10, 17, 1)).toBeCloseTo(1, 12);
  expect(exactRangeProbability(2, 10, 17, 4)).toBeCloseTo(0, 12);
});

it("summed over what can be seen, the chances fall from 1 to 0 and never rise", () => {
  const chances = Array.from({ length: 102 }, (_, range) => exactRangeProbability(4, 100, 300, range));
  chances.slice(1).forEach((chance, range) => {
    expect(chance).toBeLessThanOrEqual((chances[range] as number) + 1e-13);
  });
  expect(chances.at(-1)).toBeLessThan(1e-12);
});

it("large tests stay sound: 100 × 100 and 5000 × 2", () => {
  expect(exactRangeProbability(100, 100, 9000, 16)).toBeGreaterThan(0.1);
  expect(exactRangeProbability(100, 100, 9000, 40)).toBeLessThan(1e-9);
  expect(exactRangeProbability(5000, 2, 9000, 2)).toBeCloseTo(1, 12);
});

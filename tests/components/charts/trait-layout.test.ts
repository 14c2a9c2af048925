import { expect, it } from "vitest";
import { type TraitPoint, traitLayout } from "@/components/charts/trait-layout";

const point = (id: string, year: number, middle: number, kept: number | null = null): TraitPoint => ({
  ...{ id, year, mean: middle, interval: { low: middle - 2, high: middle + 2 }, kept },
  quarters: [middle - 20, middle - 8, middle, middle + 8, middle + 20],
});

it("puts the years from left to right, two grow-outs of one year side by side, and what is greater higher", () => {
  const { points, width } = traitLayout([point("c", 2024, 66), point("a", 2001, 60), point("b", 2001, 70)], null);
  expect(points.map(({ id }) => id)).toEqual(["a", "b", "c"]);
  const [a, b, c] = points;
  expect(a?.x).toBeLessThan(b?.x ?? 0);
  expect(b?.x).toBeLessThan(c?.x ?? 0);
  expect(c?.x).toBeLessThan(width);
  expect(b?.meanAt).toBeLessThan(a?.meanAt ?? 0);
  expect(a?.ys[4]).toBeLessThan(a?.ys[0] ?? 0);
});

it("holds every plant, the kept and the range of the type within the picture, and widens with the years", () => {
  const many = Array.from({ length: 30 }, (_, at) => point(String(at), 1990 + at, 60 + at, 90));
  const { points, band, bottom, width } = traitLayout(many, [10, 200]);
  for (const { ys, keptAt } of points)
    for (const y of [...ys, keptAt ?? 0]) {
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(bottom);
    }
  expect(band?.from).toBeLessThan(band?.to ?? 0);
  expect(width).toBeGreaterThan(30 * 40);
});

it("draws one plant, and years that are all alike", () => {
  const same = { id: "x", year: 2001, mean: 5, interval: null, quarters: [5, 5, 5, 5, 5] as const, kept: null };
  const { points } = traitLayout([same], null);
  expect(points[0]?.meanAt).toBeGreaterThan(0);
  expect(Number.isFinite(points[0]?.lowAt)).toBe(true);
});

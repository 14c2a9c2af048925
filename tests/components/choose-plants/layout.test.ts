import { expect, it } from "vitest";
import { placesInCell } from "@/components/choose-plants/cell-layout";
import { breadthLayout, chartHeight, chartWidth, everySoMany } from "@/components/choose-plants/gain-layout";
import { aPlant } from "./a-ground";

const points = Array.from({ length: 40 }, (_, at) => ({
  kept: at + 1,
  size: { low: (at + 1) * 2, high: (at + 1) * 2 },
  gain: 2 - at / 20,
}));

it("draws more breadth to the right and more gain higher, within the picture, the floor and the cut among it", () => {
  const [fewer, more] = [points[4], points[30]];
  if (!fewer || !more) throw new Error("no points");
  const [narrow, wide] = [breadthLayout(points, fewer, 100, 20), breadthLayout(points, more, 100, 20)];
  expect(narrow.at.x).toBeLessThan(wide.at.x);
  expect(narrow.at.y).toBeLessThan(wide.at.y);
  expect(narrow.floorAt).toBeGreaterThan(wide.at.x);
  for (const x of [narrow.at.x, wide.at.x, narrow.floorAt ?? 0]) expect(x).toBeLessThanOrEqual(chartWidth);
  for (const { at } of narrow.upward) expect(at).toBeLessThanOrEqual(chartHeight);
  expect(narrow.band).toBeNull();
  expect(narrow.wantedAt?.x).toBeGreaterThan(narrow.at.x);
});

it("draws a band where the size is a span", () => {
  const span = points.map((point) => ({ ...point, size: { low: point.size.low / 2, high: point.size.high } }));
  expect(breadthLayout(span, span[3] ?? { kept: 1, size: { low: 1, high: 2 }, gain: 1 }, null, null).band).toMatch(
    /^M.*Z$/,
  );
});

it("tells a dozen cuts in figures, the present and the last among them", () => {
  const told = everySoMany(points, 7).map(({ kept }) => kept);
  expect(told).toContain(7);
  expect(told.at(-1)).toBe(40);
  expect(told.length).toBeLessThan(14);
});

it("plants stand where they stand by row and position, else eight a line in the order of entry", () => {
  const loose = placesInCell(Array.from({ length: 10 }, (_, at) => aPlant(String(at))));
  expect([loose.columns, loose.rows]).toEqual([8, 2]);
  const placed = placesInCell([
    aPlant("a", { row: "10", position: 1 }),
    aPlant("b", { row: "9", position: 4 }),
    aPlant("c", { row: "9", position: 2.5 }),
  ]);
  expect(placed.placed.map(({ plant, column, row }) => [plant.name, column, row])).toEqual([
    ["c", 0, 0],
    ["b", 1, 0],
    ["a", 0, 1],
  ]);
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { type Box, placedNames } from "@/components/charts/name-places";
import { yearAxis } from "@/components/charts/points";

const area: Box = { left: 50, right: 350, top: 0, bottom: 220 };

it("a name with room stands beside its value, and one without room to the right to its left", () => {
  const [first, last] = placedNames(
    [
      { name: "Bough 3", x: 100, y: 50 },
      { name: "Bough 4", x: 345, y: 120 },
    ],
    [],
    area,
  );
  expect(first).toMatchObject({ at: { x: 112, y: 54, anchor: "start" }, moved: false });
  expect(last).toMatchObject({ at: { x: 333, y: 124, anchor: "end" }, moved: false });
});

it("names of values that lie together neither cover each other nor leave the chart, and what has no room is left out", () => {
  const value = fc.record({
    name: fc.string({ minLength: 3, maxLength: 12 }),
    x: fc.double({ min: 60, max: 340, noNaN: true }),
    y: fc.double({ min: 10, max: 210, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(value, { maxLength: 20 }), (wanted) => {
      const boxes = placedNames(wanted, [], area).map(({ name, at }) => {
        const left = at.anchor === "start" ? at.x : at.x - name.length * 7.4;
        return { left, right: left + name.length * 7.4, top: at.y - 12, bottom: at.y + 3 };
      });
      for (const [place, box] of boxes.entries()) {
        expect(box.left).toBeGreaterThanOrEqual(area.left);
        expect(box.right).toBeLessThanOrEqual(area.right);
        for (const other of boxes.slice(place + 1))
          expect(
            box.right <= other.left || other.right <= box.left || box.bottom <= other.top || other.bottom <= box.top,
          ).toBe(true);
      }
    }),
    { numRuns: 100 },
  );
  const crowd = Array.from({ length: 60 }, (_, each) => ({ name: `Hedge ${each}`, x: 200, y: 100 }));
  const placed = placedNames(crowd, [], area);
  expect(placed.length).toBeGreaterThan(6);
  expect(placed.length).toBeLessThan(60);
});

it("the axis of years keeps near its marks, and shows a year even where all lie within one", () => {
  const near = yearAxis(2026.05, 2026.12, 7);
  expect(near.ticks).toEqual([2026]);
  expect(near.ends[1] - near.ends[0]).toBeCloseTo(0.77, 9);
  const within = yearAxis(2026.4, 2026.5, 7);
  expect(within.ticks).toEqual([2026]);
  expect(within.ends[0]).toBeLessThan(2026);
  expect(yearAxis(1995, 2025, 7).ticks).toEqual([1995, 2000, 2005, 2010, 2015, 2020, 2025]);
});

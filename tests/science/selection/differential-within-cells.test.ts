import { expect, it } from "vitest";
import { differentialWithinCells } from "@/lib/science/selection/differential-within-cells";

// Means by hand: 174, 150, 193.
const heights = [182, 175, 168, 171, 150, 158, 144, 148, 201, 190, 195, 186];
const patch = heights.map((height, at) => ({ id: `p${at}`, cell: `A${Math.floor(at / 4)}`, scores: { height } }));

it("is how far the kept stand above their own neighbours: (8 + 8 + 8)/3, where the whole field would tell 8 of other soil", () => {
  const within = (kept: readonly string[], cells = true) =>
    differentialWithinCells(patch, "height", new Set(kept), cells);
  expect(within(["p0", "p5", "p8"])).toEqual({ differential: 8, plants: 3 });
  // The three tallest, 201 195 190, all of the best soil: 8, 2 and −3 above their neighbours; 195.33 − 172.33 over the field.
  expect(within(["p8", "p10", "p9"])?.differential).toBeCloseTo(7 / 3, 12);
  expect(within(["p8", "p10", "p9"], false)?.differential).toBeCloseTo(23, 9);
});

it("counts no kept plant that is alone, has no cell, or was not scored; null where none is left", () => {
  const plants = [
    ...patch,
    { id: "alone", cell: "Z", scores: { height: 400 } },
    { id: "nowhere", scores: { height: 400 } },
    { id: "blank", cell: "A0", scores: { height: null } },
  ];
  expect(differentialWithinCells(plants, "height", new Set(["p0", "alone", "nowhere", "blank"]), true)).toEqual({
    differential: 8,
    plants: 1,
  });
  expect(differentialWithinCells(plants, "height", new Set(["alone"]), true)).toBeNull();
});

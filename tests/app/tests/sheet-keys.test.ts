import { describe, expect, it } from "vitest";
import { placeAfter, stepOf } from "@/app/tests/_sheet/use-sheet-keys";

/** Rows 0 (seeds sown) to 2, two replicates. */
const places = [0, 1, 2].flatMap((row) => [0, 1].map((replicate) => ({ row, replicate })));
const placeFrom = (key: string, row: number, replicate: number, shift = false) =>
  placeAfter(key, shift, { row, replicate }, places);

describe("the keys of the counting sheet", () => {
  it("move by arrows, and stay at the edge", () => {
    expect(placeFrom("ArrowRight", 1, 0)).toEqual({ row: 1, replicate: 1 });
    expect(placeFrom("ArrowUp", 1, 0)).toEqual({ row: 0, replicate: 0 });
    expect(placeFrom("ArrowDown", 2, 0)).toBeNull();
    expect(placeFrom("ArrowLeft", 1, 0)).toBeNull();
  });

  it("go down with Enter, at the foot of a column to the first count of the next", () => {
    expect(placeFrom("Enter", 1, 0)).toEqual({ row: 2, replicate: 0 });
    expect(placeFrom("Enter", 2, 0)).toEqual({ row: 1, replicate: 1 });
    expect(placeFrom("Enter", 2, 1)).toBeNull();
  });

  it("go back up with Shift and Enter", () => {
    expect(placeFrom("Enter", 0, 1, true)).toEqual({ row: 2, replicate: 0 });
  });

  it("leave Tab, figures and letters alone", () => {
    expect([stepOf("Tab", false), stepOf("7", false), stepOf("ArrowRight", true)]).toEqual([null, null, null]);
  });
});

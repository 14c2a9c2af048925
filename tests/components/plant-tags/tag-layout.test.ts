import { describe, expect, it } from "vitest";
import { sizeOfNumber, tagLayout } from "@/components/plant-tags/tag-layout";

// By hand: A4 leaves 192 by 279 mm within its margins, Letter 197.9 by 261.4 mm.
describe("plant tags on a sheet", () => {
  it("to hang lie three across and eight down", () => {
    expect(tagLayout("a4", "hang")).toMatchObject({ across: 3, down: 8, width: 62, height: 32 });
    expect(tagLayout("letter", "hang")).toMatchObject({ across: 3, down: 8 });
  });

  it("as loops lie one across, 13 down", () => {
    expect(tagLayout("a4", "loop")).toMatchObject({ across: 1, down: 13, width: 190, height: 20 });
    expect(tagLayout("letter", "loop")).toMatchObject({ across: 1, down: 13 });
  });

  // By hand: 26 mm for four figures of 0.52 of their height each: 26 / 2.08 = 12.5 mm; for two there is room for 25 mm, and 13 is the tallest.
  it("are written as large as their place allows", () => {
    expect(sizeOfNumber("12", 26, 13)).toBe(13);
    expect(sizeOfNumber("1204", 26, 13)).toBe(12.5);
    expect(sizeOfNumber("by the gate, under the elder", 26, 13)).toBe(3);
  });
});

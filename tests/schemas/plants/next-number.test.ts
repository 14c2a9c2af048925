import { describe, expect, it } from "vitest";
import { nextNumber } from "@/lib/schemas/plants/next-number";

// Expected numbers by hand.
describe("the next free number", () => {
  it("is one more than the highest, gaps or not", () => {
    expect(nextNumber(["1", "2", "7"])).toBe(8);
    expect(nextNumber([])).toBe(1);
    expect(nextNumber(["R9", "R10", "3"], "R")).toBe(11);
  });

  it("passes over what is no number", () => {
    expect(nextNumber(["12b", "R40", "1234567", ""])).toBe(1);
  });
});

import { expect, it } from "vitest";
import { partOf } from "@/components/frame";

it("a list in parts begins with the first, and the last may be short", () => {
  expect(partOf(undefined, 450, 200)).toEqual({ part: 1, parts: 3, from: 0, to: 200 });
  expect(partOf("3", 450, 200)).toEqual({ part: 3, parts: 3, from: 400, to: 450 });
});

it("a part that is not there, or no number, is the nearest that is", () => {
  expect(partOf("9", 450, 200).part).toBe(3);
  expect(partOf("0", 450, 200).part).toBe(1);
  expect(partOf("two", 450, 200).part).toBe(1);
  expect(partOf("-1", 450, 200).part).toBe(1);
});

it("an empty list is one empty part", () => {
  expect(partOf("2", 0, 200)).toEqual({ part: 1, parts: 1, from: 0, to: 0 });
});

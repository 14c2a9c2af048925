import { expect, it } from "vitest";
import { rangeTold } from "@/lib/schemas/traits/range-told";

it.each([
  ["180 to 220 cm", [180, 220]],
  ["4–6 rows", [4, 6]],
  ["12,5-14", [12.5, 14]],
  ["white or cream", null],
  ["at most 220 cm", null],
  ["220 to 180", null],
  ["4 to 6, or 8 to 9", null],
])("%s", (allowed, range) => {
  expect(rangeTold(allowed)).toEqual(range);
});

import { expect, it } from "vitest";
import { united } from "@/lib/science/lineage/united";

it("names each thing once", () => {
  expect(united(["a", "b"], ["b", "c"])).toEqual(["a", "b", "c"]);
});

it("is one of the two itself where that holds the other, so that many lots share a list", () => {
  const all = ["a", "b"];
  const part = ["b"];
  expect(united(all, part)).toBe(all);
  expect(united(part, all)).toBe(all);
  expect(united(all, all)).toBe(all);
  expect(united([], part)).toBe(part);
  expect(united(part, [])).toBe(part);
});

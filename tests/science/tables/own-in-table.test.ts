import { expect, it } from "vitest";
import { ownAmong, withOwn } from "@/lib/science/tables/own-in-table";

const published = { KE: 9.043, CW: 4.4, CH: 0.0329, note: null };
const own = (row: string, field: string, table = "viability-constants") => ({
  table,
  row,
  field,
  value: 8.9,
  reason: "our own store",
  source: null,
});

it("finds the own values of a row, each with the published one that it stands for", () => {
  const found = ownAmong(
    [
      own("onion", "KE"),
      own("carrot", "KE"),
      own("onion", "KE", "oil-content"),
      own("onion", "x"),
      own("onion", "note"),
    ],
    "viability-constants",
    "onion",
    published,
  );
  expect(found).toEqual([
    { ...own("onion", "KE"), instead: 9.043 },
    { ...own("onion", "note"), instead: null },
  ]);
});

it("puts them in their places and leaves the rest", () => {
  expect(withOwn(published, [{ ...own("onion", "KE"), instead: 9.043 }])).toEqual({ ...published, KE: 8.9 });
});

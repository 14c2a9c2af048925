import { describe, expect, it } from "vitest";
import {
  type Column,
  cellWords,
  compareValues,
  folded,
  matching,
  type Row,
  sortValue,
  widestCells,
} from "@/components/tables/cells";

const rows: Row[] = [
  { id: "1", cells: { lot: "TW 12", variety: "Tällow Wren", note: null } },
  {
    id: "2",
    cells: { lot: { kind: "link", words: "FS 3", href: "/x" }, variety: "Ferryman’s Staple", note: "purple pod" },
  },
];

describe("sorting", () => {
  it("is by the value, and by nothing where it is unknown", () => {
    expect(sortValue({ kind: "count", words: "12.5 g", sort: 12.5 })).toBe(12.5);
    expect(sortValue({ kind: "count", words: "unknown", sort: null })).toBeUndefined();
    expect(sortValue({ kind: "link", words: "TW 12", href: "/x" })).toBe("TW 12");
    expect(sortValue({ kind: "waits", words: "test due", sort: null })).toBeUndefined();
    expect(sortValue(null)).toBeUndefined();
    expect(sortValue("")).toBeUndefined();
    expect(sortValue(0)).toBe(0);
  });

  it("puts words in code-point order, as both databases do", () => {
    expect(["b", "Ä", "a", "B", "10", "9"].sort(compareValues)).toEqual(["10", "9", "B", "a", "b", "Ä"]);
    expect([10, 9, 100].sort(compareValues)).toEqual([9, 10, 100]);
  });
});

describe("the filter", () => {
  it("finds words in any column, in any order, without accents and capitals", () => {
    expect(matching(rows, "wren tallow").map((row) => row.id)).toEqual(["1"]);
    expect(matching(rows, "PURP pod").map((row) => row.id)).toEqual(["2"]);
    expect(matching(rows, "ferryman's").map((row) => row.id)).toEqual(["2"]);
    expect(matching(rows, "  ")).toHaveLength(2);
    expect(matching(rows, "no such lot")).toEqual([]);
  });

  it("folds apostrophes, blanks and accents", () => {
    expect(folded("  Ferryman’s   Ärmel ")).toBe("ferryman's armel");
  });
});

it("every cell has its words, an unknown none", () => {
  expect(cellWords(12)).toBe("12");
  expect(cellWords(null)).toBe("");
  expect(cellWords({ kind: "date", words: "May 1987", sort: "1987-05" })).toBe("May 1987");
});

it("the longest cell of a column is found, so that its width stays", () => {
  const columns: Column[] = [{ key: "variety", name: "Variety", kind: "words" }];
  expect(widestCells(columns, rows)).toEqual({ variety: "Ferryman’s Staple" });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readTableText, writeTableText } from "@/components/grid/table-text";

describe("cells from a spreadsheet", () => {
  it("stand a row a line, parted by tabs; the line break at the end is no row", () => {
    expect(readTableText("1\tkeep\t7\r\n2\t\t5\r\n")).toEqual([
      ["1", "keep", "7"],
      ["2", "", "5"],
    ]);
    expect(readTableText("")).toEqual([]);
  });

  it("may hold line breaks, tabs and doubled quotes where they are quoted", () => {
    expect(readTableText('12\t"stood the gale\nand ""two"" ears"\t7\n13\t"a\tb"\t6')).toEqual([
      ["12", 'stood the gale\nand "two" ears', "7"],
      ["13", "a\tb", "6"],
    ]);
  });

  it("keep a quote that stands inside a cell, or that nobody closed", () => {
    expect(readTableText('6" tall\t"half\t7')).toEqual([['6" tall', '"half', "7"]]);
    expect(readTableText('"so" he said\tx')).toEqual([['"so" he said', "x"]]);
  });

  it("keep a blank row between rows", () => {
    expect(readTableText("1\n\n2")).toEqual([["1"], [""], ["2"]]);
  });

  it("come back as they were written", () => {
    const cell = fc.stringMatching(/^[a-z"\t\n ,;]{0,6}$/);
    const table = fc
      .integer({ min: 1, max: 4 })
      .chain((width) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 5 }),
      );
    fc.assert(
      fc.property(table, (cells) => {
        // one empty cell is written as nothing at all, and so is its row
        fc.pre(!(cells.at(-1)?.length === 1 && cells.at(-1)?.[0] === ""));
        expect(readTableText(writeTableText(cells))).toEqual(cells);
      }),
    );
  });
});

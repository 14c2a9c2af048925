import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  readSheetRows,
  type SheetRow,
  sheetRowsText,
  sheetTraits,
  sheetTraitsText,
} from "@/lib/schemas/plants/sheet-rows";

const run = (from: number, to: number, cell: string | null = null, letters = ""): SheetRow[] =>
  Array.from({ length: to - from + 1 }, (_, step) => ({ tag: `${letters}${from + step}`, cell }));

// The texts are those of the description of the code, written by hand.
describe("the rows of a field sheet", () => {
  it("are short where they are runs", () => {
    expect(sheetRowsText(run(1, 30))).toBe("1:30");
    expect(sheetRowsText([...run(1, 4, "A"), ...run(5, 8, "B")])).toBe("A*1:4.B*5:8");
    expect(sheetRowsText([...run(7, 12, null, "R"), { tag: "3", cell: null }])).toBe("R7:12.3");
    expect(sheetRowsText(Array(20).fill({ tag: null, cell: null }))).toBe(":20");
    expect(sheetRowsText([{ tag: "by the gate", cell: null }])).toBe("$62$79+$74$68$65+$67$61$74$65");
  });

  it("come back as they stood, whatever the tags are", () => {
    const text = fc.string({ unit: "grapheme", minLength: 1, maxLength: 6 });
    const tag = fc.oneof(fc.integer({ min: 0, max: 40 }).map(String), text, fc.constant(null));
    const row = fc.record({ tag, cell: fc.option(fc.constantFrom("A", "B", "north end")) });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 60 }), (rows) => {
        expect(readSheetRows(sheetRowsText(rows))).toEqual({ ok: true, value: rows });
      }),
    );
  });

  it("keep a number with noughts before it as it is", () => {
    const rows = ["007", "008", "010"].map((tag) => ({ tag, cell: null }));
    expect(readSheetRows(sheetRowsText(rows))).toEqual({ ok: true, value: rows });
  });

  it("are refused, naming the part, where they are none", () => {
    for (const text of ["", "1..2", "9:3", "A:B", "1:30.", "%31", "1:2000", ":2000", "1:600.1:600"]) {
      const read = readSheetRows(text);
      expect(read.ok, text).toBe(false);
    }
    const read = readSheetRows("1:4.9:3");
    expect(read.ok ? "" : read.refusals[0]?.sentence).toBe(
      '"9:3" is no row of a sheet; write tags with full stops between them, and a run as 1:30',
    );
  });
});

describe("the traits of a field sheet", () => {
  const ids = ["019a0000-0000-7000-8000-000000000000", "019a0000-0000-7000-8000-00000000001f"];

  // The short codes of these ids are worked by hand in tests/science/codes/short-code-of-id.test.ts.
  it("stand by their short codes, in the order of the sheet", () => {
    expect(sheetTraitsText([ids[1] ?? "", ids[0] ?? ""])).toBe("2223322222");
    expect(sheetTraits("2223322222", ids)).toEqual([ids[1], ids[0]]);
  });

  it("that are gone are left out", () => {
    expect(sheetTraits("ZZZZZ22222", ids)).toEqual([ids[0]]);
    expect(sheetTraits("", ids)).toEqual([]);
  });
});

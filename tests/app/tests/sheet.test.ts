import { describe, expect, it } from "vitest";
import { blockOf, type Sheet, sheetRows, textAt, withBlock, withText } from "@/app/tests/_sheet/sheet";
import { readSheet } from "@/app/tests/_sheet/sheet-entry";

const empty: Sheet = { replicates: "4", each: "25", sown: {}, days: "5, 10", apart: {}, cells: {} };

describe("the counting sheet", () => {
  it("has a row of seeds sown, one row for the first day, and all kinds on the last", () => {
    expect(sheetRows(empty).map((row) => `${row.day} ${row.kind}`)).toEqual([
      "-1 sown",
      "0 normal",
      "1 normal",
      "1 abnormal",
      "1 hard",
      "1 fresh",
      "1 dead",
    ]);
  });

  it("keeps a row in sight that holds something, though its kinds are no longer told apart", () => {
    const typed = withText(empty, { day: 1, kind: "dead" }, 2, "3");
    const rows = sheetRows({ ...typed, apart: { 1: false } });
    expect(rows.map((row) => row.kind)).toEqual(["sown", "normal", "normal", "dead"]);
  });

  it("takes a block of cells from a spreadsheet, and leaves out what lies outside", () => {
    const block = blockOf("20\t18\r\n3\t4\t9\t9\t9\r\n") ?? [];
    const filled = withBlock(empty, { row: 1, replicate: 1 }, block);
    expect(textAt(filled, { day: 0, kind: "normal" }, 2)).toBe("18");
    expect(textAt(filled, { day: 1, kind: "normal" }, 3)).toBe("9");
    expect(Object.keys(filled.cells)).toHaveLength(5);
    expect(blockOf("20")).toBeNull();
  });

  it("reads to replicates with what was counted; a day of which nothing was typed is not counted, a 0 is", () => {
    let sheet = withText(empty, { day: 0, kind: "normal" }, 0, "20");
    sheet = withText(sheet, { day: 1, kind: "normal" }, 0, "0");
    sheet = withText(sheet, { day: -1, kind: "sown" }, 1, "24");
    const read = readSheet(sheet);
    expect(read.faults).toEqual([]);
    expect(read.replicates.map((replicate) => replicate.sown)).toEqual([25, 24, 25, 25]);
    expect(read.replicates[0]?.counts.map((count) => [count.day, count.normal, count.dead])).toEqual([
      [5, 20, null],
      [10, 0, null],
    ]);
    expect(read.replicates[1]?.counts).toEqual([]);
  });

  it("says at its cell what cannot stand: no count, no number of seedlings, too many, no day", () => {
    let sheet = withText({ ...empty, days: "5, x, 10" }, { day: 0, kind: "normal" }, 0, "2o");
    sheet = withText(sheet, { day: 2, kind: "dead" }, 1, "2");
    sheet = withText(sheet, { day: 0, kind: "normal" }, 2, "26");
    const { faults } = readSheet(sheet);
    expect(faults.map((fault) => fault.key)).toEqual(["days", "0|normal|0", "2|normal|1", "0|normal|2"]);
    expect(faults[1]?.sentence).toBe("Replicate 1, day 5: “2o” is not a count.");
  });

  it("counts what stands already against the seeds sown", () => {
    const sheet = withText({ ...empty, days: "10", replicates: "1" }, { day: 0, kind: "normal" }, 0, "6");
    const standing = [[{ day: 5, normal: 20, abnormal: null, hard: null, fresh: null, dead: null }]];
    expect(readSheet(sheet, standing).faults.map((fault) => fault.key)).toEqual(["0|normal|0"]);
    expect(readSheet(sheet).faults).toEqual([]);
  });

  it("leads a refusal of the entry to its cell, though an earlier day was left out", () => {
    const sheet = withText(empty, { day: 1, kind: "normal" }, 3, "9");
    const read = readSheet(sheet);
    expect(read.cellAt(["replicates", 3, "counts", 0, "dead"])).toBe("1|dead|3");
    expect(read.cellAt(["replicates", 2, "sown"])).toBe("sown|2");
    expect(read.cellAt(["on"])).toBeNull();
  });
});

describe("a day that nobody wrote down", () => {
  it("is typed as ? and stays unknown", () => {
    const sheet = withText({ ...empty, days: "?", replicates: "1", each: "20" }, { day: 0, kind: "normal" }, 0, "18");
    const read = readSheet(sheet);
    expect([read.faults, read.replicates[0]?.counts[0]?.day]).toEqual([[], null]);
  });
});

import { describe, expect, it } from "vitest";
import { rowsAsCsv, tableAsCsv } from "@/app/varieties/csv/rows-as-csv";
import type { Column, Row } from "@/components/tables/cells";

const columns: readonly Column[] = [
  { key: "name", name: "Variety", kind: "words" },
  { key: "grams", name: "On hand", kind: "count" },
  { key: "test", name: "Best germination", kind: "span" },
  { key: "note", name: "Note", kind: "words", apart: true },
];
const rows: readonly Row[] = [
  {
    id: "1",
    cells: {
      name: { kind: "link", words: "Mère Noire", href: "/x" },
      grams: { kind: "count", words: "1,240 g", sort: 1240 },
      test: { kind: "span", value: 0.64, low: 0.49, high: 0.77, grade: "counted", words: "64 %", figure: "64 %" },
      note: "tall",
    },
  },
  { id: "2", cells: { name: "=SUM(A1)", grams: null, test: null, note: "short" } },
  { id: "3", cells: { name: 'Grey, "old"', grams: { kind: "count", words: "8 g", sort: 8 }, note: "" } },
];
const units = { grams: "g", test: "share" };
const lines = (parameters: Record<string, string>) =>
  tableAsCsv(parameters, columns, rows, units).trimEnd().split("\r\n");

describe("a table as CSV", () => {
  it("gives figures without their wording, units in the head, unknown as empty", () => {
    expect(lines({})[0]).toBe("variety,on_hand_g,best_germination_share");
    expect(lines({})[1]).toBe("Mère Noire,1240,0.64");
    expect(lines({})[3]).toBe('"Grey, ""old""",8,');
  });

  it("marks what a spreadsheet would run as a formula", () => {
    expect(lines({})[2]).toBe("'=SUM(A1),,");
  });

  it("holds what the address leaves, in its order and columns; unknown stands last either way", () => {
    expect(lines({ filter: "mere" })).toHaveLength(2);
    expect(
      lines({ sort: "grams", columns: "name,note" })
        .slice(1)
        .map((line) => line.split(",").at(-1)),
    ).toEqual(["", "tall", "short"]);
    expect(lines({ sort: "-grams" })[3]).toBe("'=SUM(A1),,");
    expect(lines({ columns: "name,note" })[0]).toBe("variety,note");
  });

  it("is a file to be taken away", async () => {
    const file = rowsAsCsv(new Request("http://here/csv?filter=mere"), "varieties", columns, rows);
    expect(file.headers.get("content-disposition")).toBe('attachment; filename="varieties.csv"');
    expect((await file.text()).split("\r\n")).toHaveLength(3);
  });
});

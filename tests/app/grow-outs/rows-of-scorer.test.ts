import { expect, it } from "vitest";
import { rowsOfScorer } from "@/app/grow-outs/[id]/plants/_grid/rows-of-scorer";
import { noEdits, withCells } from "@/components/grid";

const vigour = "trait:v";
const data = {
  rows: [{ key: "a", added: false, stored: { tag: "1", [vigour]: "7" }, notes: {} }],
  people: [
    { value: "halda", words: "Halda Morrow" },
    { value: "osk", words: "Osk Tarn" },
  ],
  own: { a: { [vigour]: [[0, "7"]] as const } },
};

it("a cell shows the own score of whoever fills the grid in, so that one equal to another's is an edit", () => {
  expect(rowsOfScorer(data, "")).toBe(data.rows);
  expect(rowsOfScorer(data, "halda")[0]?.stored).toEqual({ tag: "1", [vigour]: "7" });
  const [row] = rowsOfScorer(data, "osk");
  expect(row?.stored).toEqual({ tag: "1" });
  const typed = [{ row: "a", column: vigour, text: "7" }];
  const rows = (steward: string) => new Map(rowsOfScorer(data, steward).map((each) => [each.key, each]));
  expect(withCells(noEdits, rows("osk"), typed).cells).toEqual({ a: { [vigour]: "7" } });
  expect(withCells(noEdits, rows("halda"), typed).cells).toEqual({});
});

import { describe, expect, it } from "vitest";
import { filledIn, rowsInOrder } from "@/app/grow-outs/[id]/plants/_grid/sheet-order";
import { sheetPlaces } from "@/app/grow-outs/[id]/plants/_grid/sheet-places";
import { type GridRow, noEdits } from "@/components/grid";
import type { PlantOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";

const plant = (id: string, name: string): PlantOfGrowOut => ({
  ...{
    id,
    name,
    cell: null,
    otherNames: [],
    row: null,
    position: null,
    kept: null,
    seedGrams: null,
    marks: [],
    scores: new Map(),
  },
});
const row = (key: string, tag: string): GridRow => ({ key, added: false, stored: { tag }, notes: {} });
const plants = [plant("a", "1"), plant("b", "2"), plant("c", "3")];
const rows = [row("a", "1"), row("b", "2"), row("c", "3")];
const places = sheetPlaces(
  [
    { tag: "3", cell: null },
    { tag: "7", cell: "B" },
    { tag: "1", cell: null },
    { tag: null, cell: null },
  ],
  plants,
);
const byKey = (added: readonly string[] = []) =>
  new Map(rowsInOrder(rows, added, places).map((each) => [each.key, each]));

describe("a field sheet in the grid", () => {
  it("has its lines first, as they lie on the paper, then the other plants", () => {
    expect(rowsInOrder(rows, [], places).map((each) => each.key)).toEqual(["c", "sheet:7", "a", "sheet:#3", "b"]);
    expect(rowsInOrder(rows, [], places)[1]?.stored).toEqual({ tag: "7", cell: "B" });
  });

  it("adds a row that is offered with the first cell that is written into it, and not before", () => {
    const edits = filledIn(noEdits, byKey(), places, [{ row: "sheet:7", column: "words", text: "early" }]);
    expect(edits).toEqual({ added: ["sheet:7"], cells: { "sheet:7": { tag: "7", cell: "B", words: "early" } } });
    expect(filledIn(noEdits, byKey(), places, [{ row: "sheet:7", column: "tag", text: "7" }])).toEqual(noEdits);
    const more = filledIn(edits, byKey(edits.added), places, [{ row: "sheet:7", column: "intent", text: "keep" }]);
    expect(more.cells["sheet:7"]).toEqual({ tag: "7", cell: "B", words: "early", intent: "keep" });
    expect(rowsInOrder(rows, edits.added, places).map((each) => each.key)).toEqual([
      ...["c", "sheet:7", "a", "sheet:#3", "b"],
    ]);
  });

  it("keeps what is written of plants that the sheet has not", () => {
    const edits = filledIn(noEdits, byKey(), places, [{ row: "b", column: "words", text: "leans" }]);
    expect(edits).toEqual({ added: [], cells: { b: { words: "leans" } } });
  });

  it("gives each line of a tag that stands twice its own plant", () => {
    const twins = [plant("a", "7"), plant("b", "7")];
    const lines = Array.from({ length: 3 }, () => ({ tag: "7", cell: null }));
    expect(sheetPlaces(lines, twins).map(({ key, onRecord }) => [key, onRecord])).toEqual([
      ["a", true],
      ["b", true],
      ["sheet:7", false],
    ]);
    expect(new Set(sheetPlaces(lines, []).map(({ key }) => key)).size).toBe(3);
  });
});

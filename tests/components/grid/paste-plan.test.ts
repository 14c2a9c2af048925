import { describe, expect, it } from "vitest";
import { noEdits, withCells } from "@/components/grid/edits";
import { type PasteGround, pastedChanges, planPaste } from "@/components/grid/paste-plan";
import { byKey, columns, gridRow, rows, wordsColumn } from "./made-grid";

const ground = (more: Partial<PasteGround> = {}): PasteGround => ({
  ...{ rows, columns, edits: noEdits, nameColumn: "tag", at: { row: 0, column: 1 }, byName: false },
  newKey: (number) => `new${number}`,
  ...more,
});
const states = (table: string[][], more?: Partial<PasteGround>) =>
  planPaste(table, ground(more)).cells.map((row) => row.map((cell) => cell.state));

describe("pasting by place", () => {
  it("says of each cell whether it is new, changed, the same, empty or refused", () => {
    const table = [
      ["keep", "5"],
      ["keep", "8"],
      ["", "12"],
    ];
    expect(states(table)).toEqual([
      ["new", "new"],
      ["same", "changed"],
      ["empty", "refused"],
    ]);
    const plan = planPaste(table, ground());
    expect(plan.cells[2]?.[1]?.why).toBe('"12" is no step of 1 to 9; write a whole number from 1 to 9');
    expect(pastedChanges(plan)).toEqual([
      { row: "p1", column: "intent", text: "keep" },
      { row: "p1", column: "vigour", text: "5" },
      { row: "p2", column: "vigour", text: "8" },
    ]);
  });

  it("holds what is pasted against what is typed and not stored yet", () => {
    const edits = withCells(noEdits, byKey, [{ row: "p2", column: "vigour", text: "8" }]);
    expect(states([["keep", "8"]], { edits, at: { row: 1, column: 1 } })).toEqual([["same", "same"]]);
  });

  it("refuses what falls beside the grid, with the reason", () => {
    const plan = planPaste([["keep", "5", "x"], ["watch"], ["pull"], ["keep"]], ground());
    expect(plan.cells[0]?.[2]?.why).toBe("no column stands here");
    expect(plan.cells[3]?.[0]?.why).toContain("no plant stands in this row");
  });

  it("adds a plant below the last where its tag is pasted", () => {
    const plan = planPaste([["3"], ["4"]], ground({ at: { row: 2, column: 0 } }));
    expect(plan.added).toEqual(["new0"]);
    expect(pastedChanges(plan)).toEqual([{ row: "new0", column: "tag", text: "4" }]);
  });
});

describe("pasting by tag", () => {
  const byName = { byName: true, at: { row: 0, column: 0 } };

  it("finds each plant whatever the order, and adds those that are new", () => {
    const plan = planPaste(
      [
        ["3", "pull", "2"],
        ["1", "keep", "9"],
        ["7", "watch", ""],
      ],
      ground(byName),
    );
    expect(plan.added).toEqual(["new0"]);
    expect(pastedChanges(plan)).toEqual([
      { row: "p3", column: "intent", text: "pull" },
      { row: "p3", column: "vigour", text: "2" },
      { row: "p1", column: "intent", text: "keep" },
      { row: "p1", column: "vigour", text: "9" },
      { row: "new0", column: "tag", text: "7" },
      { row: "new0", column: "intent", text: "watch" },
    ]);
  });

  it("takes a first row of names for the columns, in any order", () => {
    const plan = planPaste(
      [
        ["VIGOUR", "tag", "seed coat"],
        ["4", "2", "red"],
      ],
      ground(byName),
    );
    expect(plan.headed).toBe(true);
    expect(pastedChanges(plan)).toEqual([{ row: "p2", column: "vigour", text: "4" }]);
    expect(plan.cells[0]?.[2]).toMatchObject({ state: "refused", why: "no column stands here" });
  });

  it("asks rather than guesses where a tag stands twice", () => {
    const twins = [...rows, gridRow("p4", { tag: "2" })];
    const plan = planPaste([["2", "keep"]], ground({ ...byName, rows: twins }));
    expect(plan.cells[0]?.[1]).toMatchObject({ state: "refused", why: "2 plants have the tag 2; paste row by row" });
    const again = planPaste(
      [
        ["8", "keep"],
        ["8", "pull"],
      ],
      ground(byName),
    );
    expect(again.cells[1]?.[1]?.state).toBe("refused");
    expect(again.added).toEqual(["new0"]);
  });
});

it("200 rows of 4 cells are planned whole", () => {
  const many = Array.from({ length: 200 }, (_, index) => gridRow(`m${index}`, { tag: String(index + 1) }));
  const table = many.map((_, index) => [String(200 - index), "keep", String((index % 9) + 1), "upright"]);
  const four = [...columns, wordsColumn("words")];
  const plan = planPaste(table, ground({ rows: many, columns: four, byName: true, at: { row: 0, column: 0 } }));
  expect(pastedChanges(plan)).toHaveLength(600);
  expect(plan.cells.flat().filter((cell) => cell.state === "same")).toHaveLength(200);
});

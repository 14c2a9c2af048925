import { describe, expect, it } from "vitest";
import {
  cellText,
  countEdits,
  isEmpty,
  noEdits,
  noHistory,
  readEdits,
  redone,
  stepped,
  undone,
  withCells,
  withoutRow,
  withRows,
} from "@/components/grid/edits";
import { emptied, filledDown, textsOf } from "@/components/grid/fill-down";
import { byKey, columns, rows } from "./made-grid";

const typed = (row: string, column: string, text: string) => ({ row, column, text });
const area = (top: number, left: number, bottom = top, right = left) => ({
  anchor: { row: top, column: left },
  focus: { row: bottom, column: right },
});

describe("what is typed", () => {
  it("stands over what is stored, and is no edit where it is the same again", () => {
    const edits = withCells(noEdits, byKey, [typed("p2", "vigour", "5")]);
    expect(cellText(edits, rows[1] as (typeof rows)[0], "vigour")).toBe("5");
    expect(countEdits(edits)).toBe(1);
    expect(isEmpty(withCells(edits, byKey, [typed("p2", "vigour", "7")]))).toBe(true);
  });

  it("an emptied cell is an edit where something is stored, and none where nothing is", () => {
    expect(countEdits(withCells(noEdits, byKey, [typed("p2", "vigour", "")]))).toBe(1);
    expect(countEdits(withCells(noEdits, byKey, [typed("p1", "vigour", "")]))).toBe(0);
  });

  it("is taken back and done again step by step; a new step forgets what was undone", () => {
    const first = withCells(noEdits, byKey, [typed("p1", "vigour", "4")]);
    const second = withCells(first, byKey, [typed("p3", "vigour", "6")]);
    const history = stepped(stepped(noHistory, first), second);
    expect(undone(history).now).toEqual(first);
    expect(undone(undone(undone(history))).now).toEqual(noEdits);
    expect(redone(undone(history)).now).toEqual(second);
    expect(stepped(undone(history), noEdits).future).toEqual([]);
    expect(stepped(history, { ...second }).past).toHaveLength(2);
  });

  it("goes with an added row that is taken away", () => {
    const edits = withCells(withRows(noEdits, ["n1"]), byKey, [typed("n1", "tag", "9")]);
    expect(countEdits(edits)).toBe(1);
    expect(isEmpty(withoutRow(edits, "n1"))).toBe(true);
  });

  it("comes back from the device as it was, and what is none is not taken up", () => {
    const edits = withCells(withRows(noEdits, ["n1"]), byKey, [typed("n1", "tag", "9")]);
    expect(readEdits(JSON.parse(JSON.stringify(edits)))).toEqual(edits);
    expect(readEdits({ cells: { p1: { vigour: 5 } }, added: [3, "n1"] })).toEqual({ cells: {}, added: ["n1"] });
    expect(readEdits("nothing")).toBeNull();
  });
});

describe("filling down", () => {
  it("copies the first chosen row into the others, edits included", () => {
    const edits = withCells(noEdits, byKey, [typed("p1", "vigour", "4"), typed("p1", "intent", "watch")]);
    expect(filledDown(area(0, 1, 2, 2), rows, columns, edits)).toEqual([
      typed("p2", "intent", "watch"),
      typed("p2", "vigour", "4"),
      typed("p3", "intent", "watch"),
      typed("p3", "vigour", "4"),
    ]);
  });

  it("takes the cell above where one row is chosen, and nothing above the first", () => {
    expect(filledDown(area(2, 2), rows, columns, noEdits)).toEqual([typed("p3", "vigour", "7")]);
    expect(filledDown(area(0, 2), rows, columns, noEdits)).toEqual([]);
  });

  it("a selection is emptied and copied cell by cell", () => {
    expect(emptied(area(1, 1, 1, 2), rows, columns)).toEqual([typed("p2", "intent", ""), typed("p2", "vigour", "")]);
    expect(textsOf(area(0, 0, 1, 2), rows, columns, noEdits)).toEqual([
      ["1", "", ""],
      ["2", "keep", "7"],
    ]);
  });
});

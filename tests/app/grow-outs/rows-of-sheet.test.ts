import { describe, expect, it } from "vitest";
import { goneFromField, rowsOfSheet } from "@/app/grow-outs/[id]/sheet/_sheet/rows-of-sheet";
import type { PlantOfGrowOut, StandingMark } from "@/lib/registry/grow-outs/plants-of-grow-out";
import type { SheetAsked } from "@/lib/schemas/plants/sheet-asked";

const nothing: SheetAsked = {
  ...{ asked: false, down: null, order: null, letters: null, from: null, many: null, cell: null, perCell: null },
  ...{ paper: null, lie: null, on: null },
};

const mark = (tag: string, intent: string, fate: string | null): StandingMark => ({
  ...{ id: `mark ${tag}`, tag, intent, on: "2026-08-01", words: null, fate, stewardId: null },
});

const plant = (name: string, cell: string | null, marks: readonly StandingMark[] = []): PlantOfGrowOut => ({
  ...{
    id: `plant ${name} ${cell}`,
    name,
    cell,
    otherNames: [],
    row: null,
    position: null,
    kept: null,
    seedGrams: null,
    marks,
    scores: new Map(),
  },
});

const plants = [
  plant("10", "B", [mark("10", "keep", null)]),
  plant("2", "A"),
  plant("3", "B", [mark("3", "watch", "lost")]),
  plant("9", null),
];

function tags(asked: Partial<SheetAsked>, of = plants): (string | null)[] {
  const rows = rowsOfSheet(of, { ...nothing, ...asked });
  if (!rows.ok) throw new Error(rows.refusals[0]?.sentence);
  return rows.value.map((row) => row.tag);
}

// Expected orders by hand.
describe("the rows of a sheet", () => {
  it("are the plants that still stand, 2 before 10, or by their cells", () => {
    expect(tags({})).toEqual(["2", "9", "10"]);
    expect(tags({ order: "cell" })).toEqual(["2", "10", "9"]);
    expect(tags({ order: "entry" })).toEqual(["10", "2", "9"]);
    expect(goneFromField(plants)).toBe(1);
  });

  it("go along the rows of a cell where their places are known", () => {
    const stood = (name: string, row: string, position: number) => ({ ...plant(name, "A"), row, position });
    const walk = [stood("1", "2", 1), stood("2", "1", 10), stood("3", "1", 2)];
    expect(tags({ order: "cell" }, walk)).toEqual(["3", "2", "1"]);
  });

  it("are the next free numbers, cell by cell, where none is on record or they are asked for", () => {
    expect(tags({}, [])).toHaveLength(30);
    expect(tags({ down: "next", many: 3 })).toEqual(["11", "12", "13"]);
    const rows = rowsOfSheet(plants, {
      ...nothing,
      down: "next",
      many: 3,
      from: 1,
      letters: "R",
      cell: "C",
      perCell: 2,
    });
    expect(rows.ok && rows.value.map(({ tag, cell }) => [tag, cell])).toEqual([
      ["R1", "C"],
      ["R2", "C"],
      ["R3", "D"],
    ]);
  });

  it("have no tag where it is written by hand", () => {
    expect(tags({ down: "hand", many: 2 })).toEqual([null, null]);
  });

  it("are refused where they are more than a sheet holds", () => {
    const rows = rowsOfSheet([], { ...nothing, many: 401 });
    expect(rows.ok ? null : rows.refusals[0]?.code).toBe("too-many");
  });
});

import { describe, expect, it } from "vitest";
import type { Notebook } from "@/lib/schemas/notebook/rows";
import { changed, faultsOf, notebookOf, placesOf, read, small } from "./small-notebook";

/** The small notebook as the registry holds it: each row with the id of its record. */
const existing: Notebook = Object.fromEntries(
  Object.entries(notebookOf(small)).map(([table, rows]) => [
    table,
    rows.map(({ cells, extra }: { cells: object; extra: object }, place: number) => ({
      cells,
      extra,
      id: `${table}-${place}`,
    })),
  ]),
) as unknown as Notebook;

const header = (file: string) => (small[file] ?? "").split("\n")[0];

describe("a row of the folder", () => {
  it("that the registry has carries the id of its record", () => {
    const again = read(small, existing);
    expect(again.faults).toEqual([]);
    for (const rows of Object.values(again.notebook ?? {})) {
      expect(rows.every(({ id }: { id?: string }) => id !== undefined)).toBe(true);
    }
  });

  it("leaves a cell of the registry alone where it is empty, or its column is not there", () => {
    const empty = { "lots.csv": "lot,variety,kind,year\nPea 1,Bent Pea,founder,\n" };
    expect(read(empty, existing).notebook?.lots[0]?.cells).toMatchObject({
      year: { text: "1999" },
      inbreeding: 0.9,
      holder: "Orla Fennwick",
    });
  });

  it("gives what it says, and what the registry says besides", () => {
    const texts = { "lots.csv": "lot,variety,kind,year,shelf\nPea 1,Bent Pea,founder,1998,top\n" };
    expect(read(texts, existing).notebook?.lots[0]).toMatchObject({
      id: "lots-2",
      cells: { year: { text: "1998" }, inbreeding: 0.9 },
      extra: { shelf: "top" },
    });
  });

  it("may be missing: nothing is taken away", () => {
    const few = read({ "stewards.csv": "steward\nNew Hand\n" }, existing);
    expect(few.faults).toEqual([]);
    expect(few.notebook?.stewards).toHaveLength(1);
    expect(few.notebook?.lots).toEqual([]);
  });
});

describe("a plant that the registry has", () => {
  it("may be said again, and other plants beside it", () => {
    const texts = { "plants.csv": `${header("plants.csv")}\nK,3,B,no,,3\nK,5,C,no,,2\n` };
    const { notebook, faults } = read(texts, existing);
    expect(faults).toEqual([]);
    expect(notebook?.plants.map(({ id }) => id)).toEqual(["plants-2", undefined]);
  });

  it("may not be said otherwise", () => {
    expect(faultsOf(changed("plants.csv", "K,3,B,no,,3", "K,3,B,no,,4"), existing)).toEqual([
      expect.stringMatching(/^plants\.csv:4: plant: "3" of K stands in the registry with other cells too/),
    ]);
  });

  it("is at fault in the folder's line where it makes the seed parents of the registry wrong", () => {
    expect(placesOf({ "plants.csv": `${header("plants.csv")}\nK,9,C,yes,3,\n` }, existing)).toEqual(["plants.csv:2"]);
  });
});

describe("a grow-out that the registry has", () => {
  const odd: Notebook = {
    ...existing,
    lots: existing.lots.filter(({ cells }) => !["Spinach 2"].includes(cells.lot)),
    growOuts: existing.growOuts.map((row) =>
      row.cells.grow_out === "S" ? { ...row, cells: { ...row.cells, seed_shares: { cv: 9 } } } : row,
    ),
  };

  it("is not looked at where the folder does not speak of it", () => {
    expect(faultsOf({ "lots.csv": `${header("lots.csv")}\nPea 7,Bent Pea,,,founder,,\n` }, odd)).toEqual([]);
  });

  it("is at fault in the line of the lot that it is now said to have given", () => {
    const harvest = { "lots.csv": `${header("lots.csv")}\nSpinach 3,Marsh Spinach,,2002,harvest,S,\n` };
    expect(placesOf(harvest, odd)).toEqual(["lots.csv:2"]);
  });
});

describe("a ring of lots", () => {
  it("is found across the folder and the registry, at the folder's line", () => {
    const texts = { "lots.csv": `${header("lots.csv")}\nPea 3,Bent Pea,,,blend,Pea 4:0.5;Pea 1:0.5,\n` };
    expect(placesOf(texts, existing)).toEqual(["lots.csv:2"]);
  });
});

import { describe, expect, it } from "vitest";
import { findingLine } from "@/lib/exchange/notebook-folder/finding";
import { readNotebookFolder } from "@/lib/exchange/notebook-folder/read-notebook-folder";
import { filesOf } from "./folder-of-files";
import { added, changed, faultsOf, notebookOf, placesOf, read, small, warningsOf } from "./small-notebook";

const cellsOf = (texts: Record<string, string>) => {
  const { stewards, varieties, growOuts, lots, plants, tests, ledger } = notebookOf(texts);
  return [stewards, varieties, growOuts, lots, plants, tests, ledger].map((rows) => rows.map(({ cells }) => cells));
};

/** The same notebook as a spreadsheet of another country writes it. */
function withSemicolons(texts: Readonly<Record<string, string>>): Record<string, string> {
  const line = (text: string) =>
    text
      .split(",")
      .map((cell) => (/^\d+\.\d+$/.test(cell) ? cell.replace(".", ",") : cell.includes(";") ? `"${cell}"` : cell))
      .join(";");
  return Object.fromEntries(Object.entries(texts).map(([file, text]) => [file, text.split("\n").map(line).join("\n")]));
}

describe("columns", () => {
  it("may stand in any order", () => {
    const mixed = "kind,steward,place\ngrower,Orla Fennwick,Low Barrow\nlibrary,The Seed Shelf,Low Barrow\n";
    expect(cellsOf({ ...small, "stewards.csv": mixed })).toEqual(cellsOf(small));
  });

  it("that nobody reads are kept, with a warning", () => {
    const texts = changed(
      "stewards.csv",
      "kind\nOrla Fennwick,Low Barrow,grower",
      "kind,since\nOrla Fennwick,Low Barrow,grower,1990",
    );
    const padded = changed("stewards.csv", "Low Barrow,library", "Low Barrow,library,", texts);
    expect(notebookOf(padded).stewards[0]?.extra).toEqual({ since: "1990" });
    expect(warningsOf(padded)).toEqual([
      'warning: stewards.csv:1: column "since" is not known here; it is kept and goes out again',
    ]);
  });

  it("that are near to one that is missing are asked about", () => {
    expect(warningsOf(changed("stewards.csv", "place", "plaace"))[0]).toMatch(/did you mean place\?$/);
  });

  it("that every line needs are missed once, at the header, and their cells not again", () => {
    expect(faultsOf(changed("lots.csv", "lot,variety,holder", "lott,variety,holder"))).toEqual([
      'lots.csv:1: "lot" is not among the columns; every line needs lot: did you mean lott?',
    ]);
  });

  it("may not stand twice", () => {
    expect(placesOf(changed("stewards.csv", "place,kind", "kind,kind"))).toContain("stewards.csv:1");
  });

  it("with the names of what every object has are columns like others", () => {
    const texts = changed("stewards.csv", "place,kind", "constructor,__proto__");
    const [row] = notebookOf(texts).stewards;
    expect(Object.entries(row?.extra ?? {})).toEqual([
      ["constructor", "Low Barrow"],
      ["__proto__", "grower"],
    ]);
  });
});

describe("a row", () => {
  it("with nothing in it is skipped but counted", () => {
    const texts = {
      ...small,
      "stewards.csv": "steward,place,kind\n\n,,\n  ,\nOrla Fennwick,,grower\nThe Seed Shelf,,wizard\n",
    };
    expect(placesOf(texts)).toEqual(["stewards.csv:6"]);
  });

  it("is counted as a spreadsheet counts: a line break inside quotes is no row", () => {
    const stewards = 'steward,place,kind\nOrla Fennwick,"Low\r\nBarrow\nor so",grower\nThe Seed Shelf,,wizard\n';
    expect(placesOf({ ...small, "stewards.csv": stewards })).toEqual(["stewards.csv:3"]);
  });

  it("may end before its last open columns, with a warning", () => {
    expect(warningsOf(changed("stewards.csv", "Low Barrow,library", "Low Barrow"))).toEqual([
      "warning: stewards.csv:3: has 2 cells where the header has 3; the missing ones were read as empty",
    ]);
  });

  it("may end in any of the three ways of ending a line", () => {
    for (const end of ["\r\n", "\r", "\n"]) {
      const texts = Object.fromEntries(Object.entries(small).map(([file, text]) => [file, text.replaceAll("\n", end)]));
      expect(cellsOf(texts)).toEqual(cellsOf(small));
    }
  });

  it("whose quote does not close where its cell ends is refused, and what it swallowed is not blamed on others", () => {
    const texts = changed("lots.csv", "Kale 2,Hollow Kale", '"Kale 2,Hollow Kale');
    expect(placesOf(texts)).toEqual(["lots.csv:3"]);
  });

  it("keeps its number after a row whose quote swallowed others", () => {
    const stewards = 'steward,place,kind\n"Orla Fennwick,x\nThe Seed Shelf,"y"\nAnother,,wizard\n';
    expect(placesOf({ "stewards.csv": stewards })).toEqual(["stewards.csv:2", "stewards.csv:4"]);
  });

  it("may have a quote mark inside a cell that is not quoted", () => {
    expect(notebookOf(added("stewards.csv", 'Ned "the beans" Ash,5" pot,grower')).stewards[2]?.cells).toMatchObject({
      steward: 'Ned "the beans" Ash',
      place: '5" pot',
    });
  });
});

describe("a file", () => {
  it("that is absent has no rows", () => {
    expect(faultsOf({})).toEqual([]);
    expect(notebookOf({}).lots).toEqual([]);
  });

  it("that is empty lacks its header", () => {
    expect(placesOf({ ...small, "tests.csv": "" })).toEqual(["tests.csv"]);
    expect(placesOf({ ...small, "tests.csv": "\n\n" })).toEqual(["tests.csv"]);
  });

  it("that is no text is refused whole, and its names are not missed", () => {
    const files = filesOf(small);
    for (const bytes of [
      [0x50, 0x4b, 3, 4, 20],
      [0xff, 0xfe, 0x6c, 0],
      [0x6c, 0, 0x6f, 0],
      [0xd0, 0xcf, 0x11, 0xe0],
    ]) {
      files.set("lots.csv", Uint8Array.from(bytes));
      expect(readNotebookFolder(files).faults.map(findingLine)).toEqual([
        expect.stringMatching(/^lots\.csv: .*no CSV text/),
      ]);
    }
  });

  it("with a byte-order mark is read, with a notice", () => {
    const texts = { ...small, "lots.csv": `\ufeff${small["lots.csv"]}` };
    expect(cellsOf(texts)).toEqual(cellsOf(small));
    expect(warningsOf(texts)).toEqual([expect.stringMatching(/^warning: lots\.csv: begins with a byte-order mark/)]);
  });

  it("in Windows-1252 is read, with a notice", () => {
    const files = filesOf(small);
    // É is C9 there and no beginning of anything in UTF-8 before an l; ’ is 92.
    files.set(
      "stewards.csv",
      Uint8Array.from([...Buffer.from("steward,place\nOrla Fennwick,\nThe Seed Shelf,"), 0xc9, 0x6c, 0x92]),
    );
    const { notebook, warnings } = readNotebookFolder(files);
    expect(notebook?.stewards[1]?.cells.place).toBe("Él’");
    expect(warnings.map(findingLine)).toEqual([expect.stringMatching(/^warning: stewards\.csv: .*Windows-1252/)]);
  });

  it("with semicolons and decimal commas is read, with a notice", () => {
    const texts = withSemicolons(small);
    expect(texts["plants.csv"]).toContain("yes;4,5;7");
    expect(cellsOf(texts)).toEqual(cellsOf(small));
    expect(warningsOf(texts)).toContainEqual(
      expect.stringMatching(/^warning: plants\.csv: .*semicolons, with decimal commas/),
    );
  });

  it("with tabs is read, with a notice", () => {
    const tabbed = { ...small, "stewards.csv": (small["stewards.csv"] ?? "").replaceAll(",", "\t") };
    expect(cellsOf(tabbed)).toEqual(cellsOf(small));
    expect(warningsOf(tabbed)).toContain("warning: stewards.csv: is parted by tabs; it was read so");
  });

  it("with semicolons alone keeps its decimal points", () => {
    const texts = { ...small, "plants.csv": (small["plants.csv"] ?? "").replaceAll(",", ";").replace("4.5", "4.125") };
    expect(read(texts).notebook?.plants[0]?.cells.seed_grams).toBe(4.125);
  });

  it("with decimal commas has no point that may part thousands", () => {
    const texts = withSemicolons(changed("plants.csv", "yes,2,", "yes,2.125,"));
    const mixed = { ...texts, "plants.csv": (texts["plants.csv"] ?? "").replace("2,125", "2.125") };
    expect(faultsOf(mixed)).toEqual([
      expect.stringMatching(/^plants\.csv:3: seed_grams: "2.125" may have a thousands mark/),
    ]);
  });
});

import { describe, expect, it } from "vitest";
import { findingLine } from "@/lib/exchange/notebook-folder/finding";
import { readFurtherFiles } from "@/lib/exchange/notebook-folder/read-further-files";
import { writeNotebookFolder } from "@/lib/exchange/notebook-folder/write-notebook-folder";
import { furtherSpecs } from "@/lib/registry/notebook/further/specs";
import { emptyNotebook } from "@/lib/schemas/notebook/rows";
import { filesOf } from "./folder-of-files";

const read = (texts: Record<string, string>) => {
  const { tables, faults, warnings } = readFurtherFiles(filesOf(texts));
  return { tables, faults: faults.map(findingLine), warnings: warnings.map(findingLine) };
};

describe("a file of further records", () => {
  it("is read as text, by its columns in any order, each row with its line", () => {
    const { tables, faults } = read({
      "stories.csv": 'words,variety\n"Came, she said, by cart",Bent Pea\n\nTwice lost,\n',
    });
    expect(faults).toEqual([]);
    expect(tables).toEqual([
      {
        file: "stories.csv",
        columns: ["variety", "words"],
        rows: [
          { line: 2, cells: { variety: "Bent Pea", words: "Came, she said, by cart" } },
          { line: 4, cells: { variety: "", words: "Twice lost" } },
        ],
      },
    ]);
  });

  it("with decimal commas gives points where a number is meant, and leaves words alone", () => {
    const { tables } = read({ "variety_details.csv": "variety;isolation_wanted_m;note\nBent Pea;12,5;3,5\n" });
    expect(tables[0]?.rows[0]?.cells).toEqual({ variety: "Bent Pea", isolation_wanted_m: "12.5", note: "3,5" });
  });

  it("misses a column that every line needs, and warns of one that nobody reads", () => {
    const { faults, warnings } = read({ "stories.csv": "wordz\nonce\n" });
    expect(faults).toEqual([
      'stories.csv:1: "words" is not among the columns; every line needs words: did you mean wordz?',
    ]);
    expect(warnings[0]).toMatch(/^warning: stories\.csv:1: column "wordz" is not known here; it was not read/);
  });

  it("may not have a row with a comma too many", () => {
    expect(read({ "stories.csv": "words\none, two\n" }).faults).toEqual([
      expect.stringMatching(/^stories\.csv:2: 2 cells/),
    ]);
  });

  it("that nobody knows is named, with what was meant", () => {
    expect(read({ "lot.csv": "lot\n", "photos/1a.jpg": "", "stewards.csv": "steward\n" }).warnings).toEqual([
      "warning: lot.csv: is no file of a notebook folder; it was not read: did you mean lots.csv?",
    ]);
    expect(read({ "Lots.xlsx": "", "Heft 3.ods": "" }).warnings).toEqual([
      "warning: Heft 3.ods: is no file of a notebook folder; it was not read: save it as a CSV file for each table",
      "warning: Lots.xlsx: is no file of a notebook folder; it was not read: save it as lots.csv",
    ]);
  });
});

describe("every further file", () => {
  it("that is written reads back as the same rows", () => {
    const tables = furtherSpecs.map(({ file, columns }) => {
      const names = columns.map(({ column }) => column);
      const row = (word: string) =>
        Object.fromEntries(names.map((name, place) => [name, `${word} ${place}, "${name}"\n`]));
      return { file, columns: names, rows: [{ cells: row("one") }, { cells: row("two") }] };
    });
    const again = readFurtherFiles(writeNotebookFolder(emptyNotebook(), tables));
    expect(again.faults).toEqual([]);
    expect(again.warnings).toEqual([]);
    const bare = again.tables.map(({ file, columns, rows }) => ({
      file,
      columns,
      rows: rows.map(({ cells }) => ({ cells })),
    }));
    expect(bare).toEqual(tables);
  });
});

import { describe, expect, it } from "vitest";
import { findingLine } from "@/lib/exchange/notebook-folder/finding";
import { readNotebookFolder } from "@/lib/exchange/notebook-folder/read-notebook-folder";
import { referenceFolder, referenceText } from "./folder-of-files";

describe("the sample notebook with faults", () => {
  const { faults, warnings, notebook } = readNotebookFolder(referenceFolder("notebook-faulty"));

  it("gives each fault its line, and no other", () => {
    const found = [...new Set(faults.map(({ file, line }) => `${file}:${line}`))].sort();
    expect(found).toEqual(referenceText("notebook-faulty", "expected-faults.txt").trim().split("\n").sort());
  });

  it("is not handed on", () => {
    expect(notebook).toBeNull();
  });

  it("says column, what stands there and what would be right", () => {
    const lines = faults.map(findingLine);
    expect(lines).toContain(
      'lots.csv:21: year: "spring of 88" is not a date; write it as 1987, 1987-05, 1991~ or 198X',
    );
    expect(lines.find((line) => line.startsWith("tests.csv:217"))).toMatch(
      /^tests\.csv:217: date: "May-96" .*spreadsheet/,
    );
  });

  it("lists its faults in the order of files and lines", () => {
    const lots = faults.filter(({ file }) => file === "lots.csv").map(({ line }) => line ?? 0);
    expect(lots).toEqual([20, 21, 40, 64, 81, 133, 146]);
    expect(faults[0]?.file).toBe("stewards.csv");
    expect(faults.at(-1)?.file).toBe("ledger.csv");
  });

  it("warns of a crop that is not in the list", () => {
    expect(warnings.map(findingLine)).toEqual([expect.stringMatching(/^warning: varieties\.csv:14: crop: /)]);
  });
});

describe("the sample notebook", () => {
  const { faults, notebook } = readNotebookFolder(referenceFolder("notebook"));

  it("has no fault", () => {
    expect(faults).toEqual([]);
  });

  it("gives every row, with the line it was read from", () => {
    // Counted with a spreadsheet: the text of varieties.csv has line breaks inside quotes.
    const counts = Object.fromEntries(Object.entries(notebook ?? {}).map(([table, rows]) => [table, rows.length]));
    expect(counts).toEqual({
      stewards: 10,
      varieties: 13,
      growOuts: 95,
      lots: 156,
      plants: 1172,
      tests: 338,
      ledger: 474,
    });
    expect(notebook?.varieties.at(-1)?.origin).toEqual({ file: "varieties.csv", line: 14 });
  });

  it("changes nothing where the registry has it already", () => {
    const again = readNotebookFolder(referenceFolder("notebook"), { existing: notebook ?? undefined });
    expect(again.faults).toEqual([]);
    const bare = (rows: readonly { readonly cells: object }[] = []) => rows.map(({ cells }) => cells);
    expect(bare(again.notebook?.lots)).toEqual(bare(notebook?.lots));
    expect(bare(again.notebook?.ledger)).toEqual(bare(notebook?.ledger));
  });
});

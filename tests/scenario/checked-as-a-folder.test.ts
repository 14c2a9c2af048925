import { expect, it } from "vitest";
import { readFurtherFiles } from "@/lib/exchange/notebook-folder/read-further-files";
import { readNotebookFolder } from "@/lib/exchange/notebook-folder/read-notebook-folder";
import { scenarioFolder } from "@/seed-scenario/scenario-folder";

const encoder = new TextEncoder();
const files = new Map([...scenarioFolder()].map(([name, text]) => [name, encoder.encode(text)] as const));

it("has no fault, and of warnings only the jar that was weighed with the rice in it", () => {
  const { faults, warnings } = readNotebookFolder(files);
  expect(faults).toEqual([]);
  expect(warnings.map(({ file, code }) => [file, code])).toEqual([["ledger.csv", "weighed-above-balance"]]);
});

it("has further files that are read without a word", () => {
  const { tables, faults, warnings } = readFurtherFiles(files);
  expect([...faults, ...warnings]).toEqual([]);
  expect(tables).toHaveLength(files.size - 7);
});

import { stringify } from "csv-stringify/sync";
import type { Finding } from "../notebook-folder/finding";

/** Findings as a table. Text that a spreadsheet would take for a formula is marked, since cells of the files stand in it. */
export function findingsCsv(findings: readonly Finding[]): string {
  const rows = findings.map(({ severity, file, line, column, sentence }) => [
    severity,
    file,
    line ?? "",
    column ?? "",
    sentence,
  ]);
  return stringify([["severity", "file", "row", "column", "sentence"], ...rows], {
    record_delimiter: "\r\n",
    escape_formulas: true,
  });
}

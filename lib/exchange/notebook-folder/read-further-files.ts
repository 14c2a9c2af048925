import type { FurtherRow, FurtherTable } from "@/lib/registry/notebook/further/further-table";
import type { FurtherSpec } from "@/lib/registry/notebook/further/spec";
import { furtherSpecs } from "@/lib/registry/notebook/further/specs";
import { type DecimalMark, readDecimal, writeDecimal } from "@/lib/schemas/notebook/decimal";
import { decodeText } from "./decode-text";
import { notebookFiles } from "./draft";
import { type Finding, Findings } from "./finding";
import { nearMiss } from "./near-miss";
import { readFurtherHeader } from "./read-further-header";
import { splitRecords } from "./split-records";
import { checkWidth, decimalMarkOf, delimiterIn, OPEN_QUOTE, partedOtherwise } from "./table-shape";

export interface FurtherReading {
  readonly tables: readonly FurtherTable[];
  readonly faults: readonly Finding[];
  readonly warnings: readonly Finding[];
}

/**
 * Reads the files of a folder that hold other kinds of record, as text: what their cells mean is for the registry. Columns may
 * stand in any order; decimal commas become points where a number is meant. A table that nobody reads gets a warning.
 */
export function readFurtherFiles(files: ReadonlyMap<string, Uint8Array>): FurtherReading {
  const findings = new Findings();
  const tables: FurtherTable[] = [];
  const known = furtherSpecs.map(({ file }) => file);
  for (const spec of furtherSpecs) {
    const bytes = files.get(spec.file);
    const table = bytes === undefined ? null : readFurther(spec, bytes, findings);
    if (table !== null) tables.push(table);
  }
  for (const file of files.keys()) {
    // Photos and whatever else a folder holds are no tables; a table that goes unread is worth a word.
    if (known.includes(file) || notebookFiles.includes(file) || !isTable(file)) continue;
    findings.warn({ file, line: null }, "file-unknown", unread(file, [...notebookFiles, ...known]));
  }
  return { tables, ...findings.sorted() };
}

function unread(file: string, known: readonly string[]): string {
  const sentence = "is no file of a notebook folder; it was not read";
  const asCsv = `${file.slice(0, file.lastIndexOf("."))}.csv`;
  const meant = nearMiss(asCsv, known);
  if (asCsv !== file && !/\.csv$/i.test(file)) return `${sentence}: save it as ${meant ?? "a CSV file for each table"}`;
  return meant === null ? sentence : `${sentence}: did you mean ${meant}?`;
}

function isTable(file: string): boolean {
  return /\.(csv|tsv|xlsx?|ods)$/i.test(file);
}

function readFurther(spec: FurtherSpec, bytes: Uint8Array, findings: Findings): FurtherTable | null {
  const { file } = spec;
  const decoded = decodeText(bytes);
  if (!decoded.ok) {
    for (const fault of decoded.refusals) findings.fault({ file, line: null }, fault);
    return null;
  }
  const { text, notice } = decoded.value;
  if (notice) findings.warn({ file, line: null }, notice.code, notice.sentence);
  const names = spec.columns.map(({ column }) => column);
  const delimiter = delimiterIn(text, (name) => names.includes(name));
  const { records, broken } = splitRecords(text, delimiter);
  for (const line of broken) findings.fault({ file, line }, OPEN_QUOTE);
  const [header, ...rest] = records;
  if (header === undefined) return null;
  const mark = decimalMarkOf(rest, delimiter);
  const parted = partedOtherwise(delimiter, mark);
  if (parted) findings.warn({ file, line: null }, parted.code, parted.sentence);
  const { positions, unnamed } = readFurtherHeader(spec, header, findings);
  const rows = rest.flatMap((record): FurtherRow[] => {
    const spot = { file, line: record.line };
    if (!checkWidth(record, header.cells.length, unnamed, spot, findings)) return [];
    const cells = spec.columns.flatMap(({ column, kind }) => {
      const position = positions.get(column);
      const cell = position === undefined ? "" : (record.cells[position] ?? "");
      const number = kind.as === "number" || kind.as === "count";
      return position === undefined ? [] : [[column, number ? withPoint(cell, mark) : cell]];
    });
    return [{ cells: Object.fromEntries(cells), line: record.line }];
  });
  return { file, columns: names.filter((name) => positions.has(name)), rows };
}

function withPoint(cell: string, mark: DecimalMark): string {
  if (mark === ".") return cell;
  const read = readDecimal(cell, mark);
  return read.ok ? writeDecimal(read.value) : cell;
}

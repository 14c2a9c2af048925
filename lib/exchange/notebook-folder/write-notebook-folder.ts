import type { FurtherTable } from "@/lib/registry/notebook/further/further-table";
import { notebookTables, type TableName, tableNames } from "@/lib/schemas/notebook/columns";
import { writeDecimal } from "@/lib/schemas/notebook/decimal";
import type { LotShare } from "@/lib/schemas/notebook/kinds";
import type { Notebook } from "@/lib/schemas/notebook/rows";
import { compareCodePoints } from "@/lib/science/code-point-order";
import { writeLotShares } from "./lot-shares";
import { type CsvCell, type CsvDialect, writeCsv } from "./write-csv";

/**
 * Writes the files of a notebook folder: the seven, each with all its columns in their order and then the extra ones by name,
 * and one for each further table. Rows keep the order in which they come. What is written exactly reads back as the same rows.
 */
export function writeNotebookFolder(
  notebook: Notebook,
  further: readonly FurtherTable[] = [],
  dialect: CsvDialect = "exact",
): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  for (const table of tableNames) files.set(notebookTables[table].file, writeTable(table, notebook[table], dialect));
  for (const { file, columns, rows } of further) {
    const cells = rows.map((row) => columns.map((column) => row.cells[column] ?? null));
    files.set(file, writeCsv(columns, cells, dialect));
  }
  return files;
}

interface AnyRow {
  readonly cells: object;
  readonly extra: Readonly<Record<string, string>>;
}

/** Writes one of the seven files. */
export function writeTable(table: TableName, rows: readonly AnyRow[], dialect: CsvDialect = "exact"): Uint8Array {
  const columns = Object.keys(notebookTables[table].columns);
  const others = [...new Set(rows.flatMap(({ extra }) => Object.keys(extra)))].sort(compareCodePoints);
  const cellsOf = ({ cells, extra }: AnyRow): CsvCell[] => [
    ...columns.map((column) => writtenCell((cells as Readonly<Record<string, unknown>>)[column])),
    ...others.map((column) => extra[column] ?? null),
  ];
  return writeCsv([...columns, ...others], rows.map(cellsOf), dialect);
}

function writtenCell(value: unknown): CsvCell {
  if (value === null || value === undefined) return null;
  if (typeof value === "string" || typeof value === "number") return value;
  if (Array.isArray(value)) return writeLotShares(value as LotShare[]);
  if (typeof value !== "object") return String(value);
  if ("text" in value) return String(value.text);
  if ("cv" in value) return `cv ${writeDecimal(Number(value.cv))}`;
  if ("growOut" in value) return String(value.growOut);
  if ("lots" in value) return writeLotShares(value.lots as LotShare[]);
  return JSON.stringify(value);
}

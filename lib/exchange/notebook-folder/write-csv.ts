import { stringify } from "csv-stringify/sync";
import { readDecimal, writeDecimal } from "@/lib/schemas/notebook/decimal";

/**
 * `exact`: every cell as it is, to be read back here. `spreadsheet`: to be opened in one: with a byte-order mark, and text
 * that looks like a formula behind an apostrophe, so that it is not run.
 */
export type CsvDialect = "exact" | "spreadsheet";

export type CsvCell = string | number | null;

/**
 * Writes a table as the bytes of a CSV file (RFC 4180): header first, CRLF line ends, UTF-8, a cell quoted only where it must
 * be, numbers as shortest plain decimals.
 */
export function writeCsv(
  columns: readonly string[],
  rows: Iterable<readonly CsvCell[]>,
  dialect: CsvDialect = "exact",
): Uint8Array {
  const spreadsheet = dialect === "spreadsheet";
  const cells = function* () {
    for (const row of rows) yield spreadsheet ? row.map(numberOrText) : row.map(orEmpty);
  };
  const text = stringify([columns, ...cells()] as (string | number)[][], {
    record_delimiter: "\r\n",
    bom: spreadsheet,
    escape_formulas: spreadsheet,
    // A lone line feed or carriage return would end the row for many readers.
    quoted_match: /[\r\n]/,
    cast: { number: writeDecimal },
  });
  return new TextEncoder().encode(text);
}

function orEmpty(cell: CsvCell): string | number {
  return cell ?? "";
}

/** A number below nothing begins like a formula and is none. */
function numberOrText(cell: CsvCell): string | number {
  if (typeof cell !== "string" || !cell.startsWith("-")) return cell ?? "";
  const read = readDecimal(cell);
  return read.ok ? read.value : cell;
}

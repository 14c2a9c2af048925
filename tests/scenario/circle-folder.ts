import { parse } from "csv-parse/sync";
import { scenarioFolder } from "@/seed-scenario/scenario-folder";

export type CsvRow = Readonly<Record<string, string>>;

const folder = scenarioFolder();
const read = new Map<string, readonly CsvRow[]>();

/** A file of the demonstration circle, read by a library and not by the project's own reader. */
export function rowsOf(file: string): readonly CsvRow[] {
  const known = read.get(file);
  if (known) return known;
  const rows = parse(folder.get(file) ?? "", { columns: true, record_delimiter: "\r\n" }) as CsvRow[];
  read.set(file, rows);
  return rows;
}

/** The one row of a file whose column says so. */
export function rowOf(file: string, column: string, value: string): CsvRow {
  const found = rowsOf(file).filter((row) => row[column] === value);
  if (found.length !== 1 || !found[0]) throw new Error(`${found.length} rows of ${file} say ${column} ${value}`);
  return found[0];
}

/** First and last day of a date as this folder writes them: whole days, months, years, decades, and spans of two years. */
export function daySpan(text: string): readonly [first: string, last: string] {
  const plain = text.replace(/[~?%]$/, "");
  const pair = /^\[?(\d{4})(?:\.\.|\/)(\d{4})\]?$/.exec(plain);
  if (pair) return [`${pair[1]}-01-01`, `${pair[2]}-12-31`];
  if (/^\d{3}X$/.test(plain)) return [`${plain.slice(0, 3)}0-01-01`, `${plain.slice(0, 3)}9-12-31`];
  if (/^\d{4}$/.test(plain)) return [`${plain}-01-01`, `${plain}-12-31`];
  // Day 31 sorts after every day of a shorter month, which is all that is asked of it here.
  if (/^\d{4}-\d{2}$/.test(plain)) return [`${plain}-01`, `${plain}-31`];
  if (/^\d{4}-\d{2}-\d{2}$/.test(plain)) return [plain, plain];
  throw new Error(`a date of no known kind: ${text}`);
}

export function numberIn(row: CsvRow, column: string): number | null {
  const text = row[column] ?? "";
  return text === "" ? null : Number(text);
}

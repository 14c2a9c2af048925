import type { DecimalMark } from "@/lib/schemas/notebook/decimal";
import { refusal } from "@/lib/science/outcome";
import type { Findings } from "./finding";
import { type CsvRecord, type Delimiter, splitRecords } from "./split-records";

export const OPEN_QUOTE = refusal(
  "quote-open",
  [],
  "a quote mark",
  "stands here that does not close where its cell ends",
  'close it, and write a quote mark inside a cell as ""',
);

/** The name of a column as it is matched; `score: vigour` is `score:vigour`. */
export function columnName(cell: string): string {
  return cell
    .normalize("NFC")
    .replace(/\s+/g, " ")
    .trim()
    .replace(/^score\s*:\s*/, "score:");
}

/** Comma, semicolon or tab: whichever parts the first line into most of the columns that the file should have. */
export function delimiterIn(text: string, isColumn: (name: string) => boolean): Delimiter {
  const firstLine = /[^\r\n]+/.exec(text)?.[0] ?? "";
  const known = (delimiter: Delimiter) =>
    (splitRecords(firstLine, delimiter).records[0]?.cells ?? []).filter((cell) => isColumn(columnName(cell))).length;
  return (["\t", ";"] as const).reduce<Delimiter>((best, other) => (known(other) > known(best) ? other : best), ",");
}

/** A table parted by semicolons or tabs writes decimal commas if any cell does. */
export function decimalMarkOf(records: readonly CsvRecord[], delimiter: Delimiter): DecimalMark {
  const writesComma = (cell: string) => /^\s*-?\d*,\d+\s*$/.test(cell);
  return delimiter !== "," && records.some(({ cells }) => cells.some(writesComma)) ? "," : ".";
}

/** The notice of a file that is not parted by commas; null for one that is. */
export function partedOtherwise(delimiter: Delimiter, mark: DecimalMark): { code: string; sentence: string } | null {
  if (delimiter === ",") return null;
  const [code, by] = delimiter === ";" ? ["read-semicolons", "semicolons"] : ["read-tabs", "tabs"];
  return { code, sentence: partedSentence(by, mark) };
}

function partedSentence(by: string, mark: DecimalMark): string {
  return `is parted by ${by}${mark === "," ? ", with decimal commas" : ""}; it was read so`;
}

/** Where each column stands in a header. */
export interface ColumnPlaces {
  /** position of each column by its name */
  readonly positions: ReadonlyMap<string, number>;
  /** columns without a name */
  readonly unnamed: readonly number[];
  /** names that stand at two columns */
  readonly repeated: readonly string[];
}

export function columnPlaces({ cells }: CsvRecord): ColumnPlaces {
  const positions = new Map<string, number>();
  const unnamed: number[] = [];
  const repeated: string[] = [];
  for (const [position, cell] of cells.entries()) {
    const name = columnName(cell);
    if (name === "") unnamed.push(position);
    else if (positions.has(name)) repeated.push(name);
    else positions.set(name, position);
  }
  return { positions, unnamed, repeated };
}

/** False where the cells may stand under the wrong columns: a comma too many (`1,063.2`) shifts all that follow. */
export function checkWidth(
  { cells }: CsvRecord,
  width: number,
  unnamed: readonly number[],
  spot: { file: string; line: number },
  findings: Findings,
): boolean {
  if (cells.length > width) {
    const wrong = `cells stand here under ${width} columns`;
    const needed = "put a cell with a comma or a line break between quote marks";
    findings.fault(spot, refusal("row-too-long", [], cells.length, wrong, needed));
    return false;
  }
  if (cells.length < width) {
    const sentence = `has ${cells.length} cells where the header has ${width}; the missing ones were read as empty`;
    findings.warn(spot, "row-short", sentence);
  }
  for (const position of unnamed) {
    if ((cells[position] ?? "").trim() === "") continue;
    const needed = "give its column a name";
    findings.fault(spot, refusal("column-unnamed", [], cells[position], "stands under no name", needed));
  }
  return true;
}

/** One fault for each name that two columns bear. */
export function reportRepeated(
  repeated: readonly string[],
  spot: { file: string; line: number },
  findings: Findings,
): void {
  for (const name of repeated) {
    findings.fault(spot, refusal("column-twice", [], name, "names two columns", "give each column a name of its own"));
  }
}

/** One fault for each column that every line needs and the header does not have. */
export function reportMissing(
  missing: readonly { readonly name: string; readonly meant: string | null }[],
  spot: { file: string; line: number },
  findings: Findings,
): void {
  for (const { name, meant } of missing) {
    const needed = meant === null ? `every line needs ${name}` : `every line needs ${name}: did you mean ${meant}?`;
    findings.fault(spot, refusal("column-missing", [], name, "is not among the columns", needed));
  }
}

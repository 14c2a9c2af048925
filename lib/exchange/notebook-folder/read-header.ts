import { type Column, notebookTables, scorePrefix, type TableName } from "@/lib/schemas/notebook/columns";
import { refusal } from "@/lib/science/outcome";
import type { Findings } from "./finding";
import { nearMiss } from "./near-miss";
import { type CsvRecord, type Delimiter, splitRecords } from "./split-records";

export interface Header {
  /** position of each column, known or not, by its name */
  readonly positions: ReadonlyMap<string, number>;
  /** columns without a name */
  readonly unnamed: readonly number[];
  /** all columns that every row needs are there, once */
  readonly sound: boolean;
}

/** Comma or semicolon: whichever parts the first line into more of the columns that the file should have. */
export function delimiterOf(text: string, table: TableName): Delimiter {
  const firstLine = /[^\r\n]+/.exec(text)?.[0] ?? "";
  const known = (delimiter: Delimiter) =>
    (splitRecords(firstLine, delimiter).records[0]?.cells ?? []).filter((cell) => columnName(cell) in columnsOf(table))
      .length;
  return known(";") > known(",") ? ";" : ",";
}

/** Reads the header row. Columns may stand in any order; unknown ones are kept, with a warning. */
export function readHeader(table: TableName, record: CsvRecord, findings: Findings): Header {
  const { file } = notebookTables[table];
  const columns = columnsOf(table);
  const positions = new Map<string, number>();
  const unnamed: number[] = [];
  let sound = true;
  for (const [position, cell] of record.cells.entries()) {
    const name = columnName(cell);
    if (name === "") unnamed.push(position);
    else if (positions.has(name)) {
      sound = false;
      const repeated = refusal("column-twice", [], name, "names two columns", "give each column a name of its own");
      findings.fault({ file, line: record.line }, repeated);
    } else positions.set(name, position);
  }
  const absent = Object.keys(columns).filter((name) => !positions.has(name));
  for (const name of absent.filter((column) => columns[column]?.needed)) {
    sound = false;
    const other = nearMiss(name, unknownColumns(table, positions.keys()));
    const needed = other === null ? `every line needs ${name}` : `every line needs ${name}: did you mean ${other}?`;
    findings.fault(
      { file, line: record.line },
      refusal("column-missing", [], name, "is not among the columns", needed),
    );
  }
  for (const name of unknownColumns(table, positions.keys())) {
    const meant = nearMiss(name, absent);
    const sentence = `column "${name}" is not known here; it is kept and goes out again`;
    const whole = meant === null ? sentence : `${sentence}: did you mean ${meant}?`;
    findings.warn({ file, line: record.line }, "column-unknown", whole);
  }
  return { positions, unnamed, sound };
}

/** The columns that nobody here reads, in the order in which they stand. */
export function unknownColumns(table: TableName, names: Iterable<string>): string[] {
  return [...names].filter((name) => !(name in columnsOf(table)) && !isScore(table, name));
}

/** Whether a column of plants.csv holds scores. */
export function isScore(table: TableName, name: string): boolean {
  return table === "plants" && name.startsWith(scorePrefix) && name.length > scorePrefix.length;
}

export function columnsOf(table: TableName): Readonly<Record<string, Column<unknown>>> {
  return notebookTables[table].columns;
}

/** `score: vigour` is `score:vigour`. */
function columnName(cell: string): string {
  return cell
    .normalize("NFC")
    .replace(/\s+/g, " ")
    .trim()
    .replace(/^score\s*:\s*/, scorePrefix);
}

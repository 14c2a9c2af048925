import { readDay, readScore } from "@/lib/schemas/notebook/cells";
import { type Column, notebookTables, type TableName } from "@/lib/schemas/notebook/columns";
import type { DecimalMark } from "@/lib/schemas/notebook/decimal";
import { type Outcome, refusal } from "@/lib/science/outcome";
import { decodeText } from "./decode-text";
import { type DraftRow, type DraftRowOf, type DraftTable, unreadTable } from "./draft";
import type { Findings } from "./finding";
import { columnsOf, isScore, readHeader } from "./read-header";
import { type CsvRecord, splitRecords } from "./split-records";
import { type ColumnPlaces, checkWidth, decimalMarkOf, delimiterIn, OPEN_QUOTE, partedOtherwise } from "./table-shape";

const NOTHING_MORE: Readonly<Record<string, string>> = Object.freeze({});

/** Reads one file of the folder, cell by cell; what refers to other rows is left for later. */
export function readTable<Table extends TableName>(
  table: Table,
  bytes: Uint8Array,
  findings: Findings,
): DraftTable<Table> {
  const { file, named } = notebookTables[table];
  const decoded = decodeText(bytes);
  if (!decoded.ok) {
    for (const fault of decoded.refusals) findings.fault({ file, line: null }, fault);
    return unreadTable();
  }
  const { text, notice } = decoded.value;
  if (notice) findings.warn({ file, line: null }, notice.code, notice.sentence);
  const delimiter = delimiterIn(text, (name) => Object.hasOwn(columnsOf(table), name));
  const { records, broken } = splitRecords(text, delimiter);
  for (const line of broken) findings.fault({ file, line }, OPEN_QUOTE);
  const [first, ...rest] = records;
  if (first === undefined) {
    const empty = refusal(
      "file-empty",
      [],
      "",
      "stands in this file",
      "write a row with the names of its columns first",
    );
    if (broken.length === 0) findings.fault({ file, line: null }, empty);
    return unreadTable();
  }
  const mark = decimalMarkOf(rest, delimiter);
  const parted = partedOtherwise(delimiter, mark);
  if (parted) findings.warn({ file, line: null }, parted.code, parted.sentence);
  const header = readHeader(table, first, findings);
  const reader = rowReader(table, header, mark, findings);
  const rows = rest.map((record) => reader(record, first.cells.length));
  const complete = broken.length === 0 && (named === null || header.positions.has(named));
  return { rows, present: new Set(header.positions.keys()), complete };
}

class ReadRow implements DraftRow<Record<string, unknown>> {
  readonly cells: Record<string, unknown> = {};
  readonly faulty = new Set<string>();
  extra = NOTHING_MORE;
  readonly #record: CsvRecord;
  readonly #header: ColumnPlaces;

  constructor(
    readonly file: string,
    record: CsvRecord,
    header: ColumnPlaces,
  ) {
    this.#record = record;
    this.#header = header;
  }

  get origin() {
    return { file: this.file, line: this.#record.line };
  }

  written(column: string): string {
    const position = this.#header.positions.get(column);
    return position === undefined ? "" : (this.#record.cells[position] ?? "");
  }
}

function rowReader<Table extends TableName>(table: Table, header: ColumnPlaces, mark: DecimalMark, findings: Findings) {
  const { file } = notebookTables[table];
  const columns = Object.entries(columnsOf(table)).map(([name, column]) => ({
    name,
    column,
    read: remembered(column),
  }));
  const others = [...header.positions.keys()].filter((name) => !Object.hasOwn(columnsOf(table), name));

  return (record: CsvRecord, width: number): DraftRowOf<Table> => {
    const row = new ReadRow(file, record, header);
    const spot = { file, line: record.line };
    const trusted = checkWidth(record, width, header.unnamed, spot, findings);
    for (const [place, { name, column, read }] of columns.entries()) {
      const text = row.written(name);
      row.cells[name] = null;
      if (!trusted && place > 0) {
        row.faulty.add(name);
        continue;
      }
      if (text.trim() === "") {
        if (!column.needed) continue;
        row.faulty.add(name);
        // A column that is not there at all was named once, at the header.
        if (header.positions.has(name)) findings.fault({ ...spot, column: name }, missing(name));
      } else if (!column.later) {
        const outcome = read(text, mark);
        if (outcome.ok) row.cells[name] = outcome.value;
        else {
          row.faulty.add(name);
          for (const fault of outcome.refusals) findings.fault({ ...spot, column: name }, fault);
        }
      }
    }
    for (const name of others) {
      const text = row.written(name);
      if (text.trim() === "") continue;
      if (row.extra === NOTHING_MORE) row.extra = {};
      row.extra = { ...row.extra, [name]: isScore(table, name) ? readScore(text, mark) : text };
    }
    // The reader of a column gives what its type says; TypeScript cannot follow that through a list of columns.
    return row as unknown as DraftRowOf<Table>;
  };
}

/** Dates repeat by the thousand in one file; each text is worked out once. */
function remembered(column: Column<unknown>): Column<unknown>["read"] {
  if (column.read !== readDay) return column.read;
  const known = new Map<string, Outcome<unknown>>();
  return (text, mark) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const outcome = column.read(text, mark);
    known.set(text, outcome);
    return outcome;
  };
}

function missing(column: string) {
  return refusal("cell-empty", [], "", "stands here", `every line needs ${column}`);
}

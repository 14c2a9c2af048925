import type { Client, Transaction } from "@/lib/db";
import { grouped } from "../../change-set/grouped";
import { sameName } from "../../names/fold-name";
import { settledCell } from "./cells";
import type { FurtherRow, FurtherTable } from "./further-table";
import { type NameBook, nameBook } from "./names";
import { readFurther } from "./read-further";
import type { FurtherColumn, FurtherSpec } from "./spec";
import { furtherSpecs } from "./specs";

/** What a further file says that the registry does not say yet. */
export interface FurtherDifference {
  readonly spec: FurtherSpec;
  readonly added: readonly FurtherRow[];
  readonly changed: readonly FurtherRow[];
  readonly same: number;
}

export async function furtherDifference(
  db: Client | Transaction,
  tables: readonly FurtherTable[],
): Promise<FurtherDifference[]> {
  const standing = new Map((await readFurther(db)).map((table) => [table.file, table.rows]));
  const names = await nameBook(db);
  return tables.flatMap((table) => {
    const spec = furtherSpecs.find((each) => each.file === table.file);
    if (!spec) return [];
    const there = standing.get(table.file) ?? [];
    return [spec.identity.by === "lines" ? ofLines(spec, table.rows, there) : ofNamed(spec, table.rows, there, names)];
  });
}

function ofLines(spec: FurtherSpec, rows: readonly FurtherRow[], there: readonly FurtherRow[]): FurtherDifference {
  const left = new Map([...grouped(there, (row) => wholeText(spec, row))].map(([text, same]) => [text, same.length]));
  const added = rows.filter((row) => {
    const text = wholeText(spec, row);
    const count = left.get(text) ?? 0;
    left.set(text, count - 1);
    return count <= 0;
  });
  return { spec, added, changed: [], same: rows.length - added.length };
}

function ofNamed(
  spec: FurtherSpec,
  rows: readonly FurtherRow[],
  there: readonly FurtherRow[],
  names: NameBook,
): FurtherDifference {
  const old = new Map(there.map((row) => [keyText(spec, row), row]));
  const added: FurtherRow[] = [];
  const changed: FurtherRow[] = [];
  for (const row of rows) {
    const before = old.get(keyText(spec, row));
    if (!before) (isStanding(spec, row, names) ? changed : added).push(row);
    else if (spec.columns.some((column) => saysOtherwise(column, row, before))) changed.push(row);
  }
  return { spec, added, changed, same: rows.length - added.length - changed.length };
}

/** An empty cell says nothing. */
function saysOtherwise(column: FurtherColumn, row: FurtherRow, before: FurtherRow): boolean {
  const says = settledCell(column, row.cells);
  return says !== "" && says !== settledCell(column, before.cells);
}

/** Details may belong to a record that stands and had none, or to one that the same folder brings. */
function isStanding(spec: FurtherSpec, row: FurtherRow, names: NameBook): boolean {
  const [first] = spec.columns;
  if (spec.identity.by !== "details" || first?.kind.as !== "name-of") return false;
  return names.idOf(first.kind.of, row.cells[first.column] ?? "") !== null;
}

function wholeText(spec: FurtherSpec, row: FurtherRow): string {
  return JSON.stringify(spec.columns.map((column) => settledCell(column, row.cells)));
}

/** The columns by which a record is known. */
export function keyText(
  spec: FurtherSpec,
  row: FurtherRow,
  columns: number = spec.identity.by === "keyed" ? spec.identity.columns : 1,
): string {
  return JSON.stringify(spec.columns.slice(0, columns).map((column) => sameName(settledCell(column, row.cells))));
}

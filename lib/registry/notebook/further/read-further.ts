import type { Client, Transaction } from "@/lib/db";
import { compareCodePoints } from "@/lib/science/code-point-order";
import { delegateOf } from "../../change-set/records";
import { writeCell } from "./cells";
import type { FurtherTable } from "./further-table";
import { joinedName, type NameBook, nameBook } from "./names";
import type { FurtherSpec, Stored } from "./spec";
import { furtherSpecs } from "./specs";

/** Every kind of record that the seven files do not hold, as rows of text in the order of entry. A kind with no record gives no file. */
export async function readFurther(db: Client | Transaction): Promise<FurtherTable[]> {
  const names = await nameBook(db);
  const tables: FurtherTable[] = [];
  for (const spec of furtherSpecs) {
    const rows = (await storedRows(db, spec))
      .map((record) => ({ cells: cellsOf(spec, record, names) }))
      .filter((row) => says(spec, row.cells));
    const first = spec.columns.slice(0, spec.inOrderOf ?? 0).map(({ column }) => column);
    const told = (cells: Readonly<Record<string, string>>) => joinedName(first.map((column) => cells[column] ?? ""));
    if (first.length > 0) rows.sort((left, right) => compareCodePoints(told(left.cells), told(right.cells)));
    if (rows.length > 0) tables.push({ file: spec.file, columns: spec.columns.map((column) => column.column), rows });
  }
  return tables;
}

/** The records that belong into a file, in the order of entry. */
export async function storedRows(db: Client | Transaction, spec: FurtherSpec): Promise<Stored[]> {
  const find = delegateOf(db, spec.table).findMany as unknown as (args: unknown) => Promise<Stored[]>;
  const rows = await find.call(delegateOf(db, spec.table), { where: spec.where ?? {}, orderBy: { id: "asc" } });
  const standing = spec.events ? thoseThatStand(rows) : rows;
  return spec.chosen ? standing.filter(await spec.chosen(db)) : standing;
}

/** Without those that a later one replaces, and without those that were taken back. */
function thoseThatStand(rows: readonly Stored[]): Stored[] {
  const replaced = new Set(rows.map((row) => row.replacesId));
  return rows.filter((row) => !replaced.has(row.id) && !row.takenBack);
}

export function cellsOf(spec: FurtherSpec, record: Stored, names: NameBook): Record<string, string> {
  return Object.fromEntries(spec.columns.map((column) => [column.column, writeCell(column, record, names)]));
}

/** Details of a record that has none besides its name are not worth a row. */
function says(spec: FurtherSpec, cells: Readonly<Record<string, string>>): boolean {
  return (
    spec.identity.by !== "details" ||
    Object.values(cells)
      .slice(1)
      .some((text) => text !== "")
  );
}

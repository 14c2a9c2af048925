import { notebookTables, type TableName, tableNames } from "@/lib/schemas/notebook/columns";
import type { Notebook, RowOf } from "@/lib/schemas/notebook/rows";
import { sameName } from "../names/fold-name";

/** What a folder says that the registry does not say yet. A row or cell that is missing in the folder is never a deletion. */
export interface TableDifference<Table extends TableName> {
  readonly added: readonly RowOf<Table>[];
  readonly changed: readonly Changed<Table>[];
  readonly same: number;
}

export interface Changed<Table extends TableName> {
  readonly row: RowOf<Table>;
  readonly id: string;
  /** what stands and what would stand, by column */
  readonly cells: readonly { readonly column: string; readonly from: string; readonly to: string }[];
}

export type Difference = { readonly [Table in TableName]: TableDifference<Table> };

/** True where bringing the folder in would write nothing. */
export function isEmpty(difference: Difference): boolean {
  return tableNames.every((table) => difference[table].added.length === 0 && difference[table].changed.length === 0);
}

/** Compares a folder's rows with the registry's: named records by their name, lines by all their cells and how often they stand. */
export function differenceOf(folder: Notebook, registry: Notebook): Difference {
  const parts = tableNames.map((table) => [table, tableDifference(table, folder[table], registry[table])]);
  return Object.fromEntries(parts) as unknown as Difference;
}

type AnyRow = RowOf<TableName>;

function tableDifference(
  table: TableName,
  folder: readonly AnyRow[],
  registry: readonly AnyRow[],
): TableDifference<TableName> {
  const key = notebookTables[table].named;
  return key === null
    ? linesDifference(Object.keys(notebookTables[table].columns), folder, registry)
    : namedDifference(key, folder, registry);
}

function namedDifference(
  key: string,
  folder: readonly AnyRow[],
  registry: readonly AnyRow[],
): TableDifference<TableName> {
  const nameOf = (row: AnyRow) => matchName(String((row.cells as Record<string, unknown>)[key]));
  const standing = new Map(registry.map((row) => [nameOf(row), row]));
  const added: AnyRow[] = [];
  const changed: Changed<TableName>[] = [];
  let same = 0;
  for (const row of folder) {
    const old = standing.get(nameOf(row));
    if (!old?.id) {
      added.push(row);
      continue;
    }
    const cells = changedCells(old, row, key);
    if (cells.length > 0) changed.push({ row, id: old.id, cells });
    else same += 1;
  }
  return { added, changed, same };
}

/** Names match after NFC, folding blanks and ’ = '. */
function matchName(name: string): string {
  return sameName(name);
}

function changedCells(old: AnyRow, row: AnyRow, key: string) {
  const cells: { column: string; from: string; to: string }[] = [];
  const compare = (column: string, from: unknown, to: unknown) => {
    const [before, after] = [cellText(from), cellText(to)];
    if (column !== key && after !== "" && before !== after) cells.push({ column, from: before, to: after });
  };
  for (const [column, to] of Object.entries(row.cells))
    compare(column, (old.cells as Record<string, unknown>)[column], to);
  for (const [column, to] of Object.entries(row.extra)) compare(column, old.extra[column], to);
  return cells;
}

function linesDifference(
  columns: readonly string[],
  folder: readonly AnyRow[],
  registry: readonly AnyRow[],
): TableDifference<TableName> {
  const standing = new Map<string, number>();
  for (const row of registry) {
    const text = lineText(columns, row);
    standing.set(text, (standing.get(text) ?? 0) + 1);
  }
  const added: AnyRow[] = [];
  let same = 0;
  for (const row of folder) {
    const text = lineText(columns, row);
    const left = standing.get(text) ?? 0;
    if (left > 0) {
      standing.set(text, left - 1);
      same += 1;
    } else added.push(row);
  }
  return { added, changed: [], same };
}

/** A line by all its cells. */
function lineText(columns: readonly string[], row: AnyRow): string {
  const cells = row.cells as Record<string, unknown>;
  const extra = Object.entries(row.extra)
    .filter(([, value]) => value !== "")
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return JSON.stringify([...columns.map((column) => cellText(cells[column])), extra]);
}

/** A cell as text, the same for the same fact: names matched, dates as written, shares by lot in a fixed order. */
export function cellText(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (typeof value === "string") return matchText(value);
  if (typeof value === "number") return String(value);
  if (Array.isArray(value)) return value.map(cellText).sort().join(";");
  const fact = value as Record<string, unknown>;
  if (typeof fact.text === "string") return fact.text;
  if (typeof fact.lot === "string") return `${matchName(fact.lot)}:${fact.share}`;
  if (typeof fact.growOut === "string") return matchName(fact.growOut);
  if (Array.isArray(fact.lots)) return cellText(fact.lots);
  return JSON.stringify(value);
}

function matchText(text: string): string {
  return text.normalize("NFC").replaceAll("\r\n", "\n").trim();
}

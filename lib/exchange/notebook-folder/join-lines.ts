import { sameName } from "@/lib/registry/names/fold-name";
import { notebookTables, type TableName } from "@/lib/schemas/notebook/columns";
import type { RowOf } from "@/lib/schemas/notebook/rows";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import type { DraftTable } from "./draft";
import type { Entry } from "./entries";

/** Tables whose lines are known by all their cells and by how often they stand. */
export type LineTable = "plants" | "tests" | "ledger";

/**
 * Joins the lines of the folder with those of the registry: first the registry's, in its order, then the folder's new ones in
 * theirs. Cells of columns that the folder does not have are not compared.
 */
export function joinLines<Table extends LineTable>(
  table: Table,
  drafts: DraftTable<Table>,
  records: readonly RowOf<Table>[],
): Entry<Table>[] {
  if (records.length === 0) {
    return drafts.rows.map((draft) => ({ cells: draft.cells, extra: draft.extra, draft, record: null }));
  }
  const columns = Object.keys(notebookTables[table].columns).filter((column) => drafts.present.has(column));
  const others = [...drafts.present].filter((column) => !Object.hasOwn(notebookTables[table].columns, column)).sort();
  const keyOf = (row: Pick<RowOf<Table>, "extra"> & { readonly cells: object }) => lineKey(row, columns, others);

  const waiting = new Map<string, DraftTable<Table>["rows"]>();
  for (const draft of drafts.rows) {
    if (draft.faulty.size > 0) continue;
    const alike = waiting.get(keyOf(draft));
    if (alike) alike.push(draft);
    else waiting.set(keyOf(draft), [draft]);
  }
  const known = new Set<object>();
  const joined: Entry<Table>[] = records.map((record) => {
    const draft = waiting.get(keyOf(record))?.shift() ?? null;
    if (draft) known.add(draft);
    return { cells: record.cells as Entry<Table>["cells"], extra: record.extra, draft, record };
  });
  for (const draft of drafts.rows) {
    if (!known.has(draft)) joined.push({ cells: draft.cells, extra: draft.extra, draft, record: null });
  }
  return joined;
}

function lineKey(
  { cells, extra }: { readonly cells: object; readonly extra: Readonly<Record<string, string>> },
  columns: readonly string[],
  others: readonly string[],
): string {
  const values = columns.map((column) => cellKey((cells as Readonly<Record<string, unknown>>)[column]));
  return JSON.stringify([...values, ...others.map((column) => extra[column]?.trim() ?? "")]);
}

function cellKey(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (typeof value === "string") return sameName(value);
  if (typeof value === "object" && "text" in value) return (value as FuzzyDate).text;
  return String(value);
}

/** A line that the registry does not have yet. */
export function isNew<Table extends TableName>(entry: Entry<Table>): boolean {
  return entry.draft !== null && entry.record === null;
}

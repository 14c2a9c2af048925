import { type ColumnsOf, notebookTables, type TableName } from "@/lib/schemas/notebook/columns";
import type { DraftCellsOf, Notebook, RowOf } from "@/lib/schemas/notebook/rows";
import { refusal } from "@/lib/science/outcome";
import type { DraftNotebook, DraftRowOf } from "./draft";
import type { Findings } from "./finding";
import { NameIndex } from "./name-index";

/** Tables whose rows are known by their name. */
export type NamedTable = "stewards" | "varieties" | "growOuts" | "lots";
export const namedTables: readonly NamedTable[] = ["stewards", "varieties", "growOuts", "lots"];

/** A record as it will be: what the folder says of it, and where it says nothing what the registry has. */
export interface Entry<Table extends TableName> {
  cells: Readonly<DraftCellsOf<ColumnsOf<Table>>>;
  extra: Readonly<Record<string, string>>;
  /** the folder's row, null where the folder has none */
  readonly draft: DraftRowOf<Table> | null;
  /** the registry's row, null where it is new */
  readonly record: RowOf<Table> | null;
}

export type NamedEntries = { readonly [Table in NamedTable]: NameIndex<Entry<Table>> };

/** Rows of the folder that bear no name of their own: the cell is empty, or the name is taken. */
export type Nameless = { readonly [Table in NamedTable]: DraftRowOf<Table>[] };

/** Joins the named rows of the folder and the registry by their names. A name stands once in a folder. */
export function nameEntries(
  drafts: DraftNotebook,
  existing: Notebook,
  findings: Findings,
): { entries: NamedEntries; nameless: Nameless } {
  const nameless: Nameless = { stewards: [], varieties: [], growOuts: [], lots: [] };
  const join = <Table extends NamedTable>(table: Table): NameIndex<Entry<Table>> =>
    joinTable(table, drafts[table].rows, existing[table], nameless[table], findings);
  const entries: NamedEntries = {
    stewards: join("stewards"),
    varieties: join("varieties"),
    growOuts: join("growOuts"),
    lots: join("lots"),
  };
  return { entries, nameless };
}

function joinTable<Table extends NamedTable>(
  table: Table,
  drafts: readonly DraftRowOf<Table>[],
  records: readonly RowOf<Table>[],
  nameless: DraftRowOf<Table>[],
  findings: Findings,
): NameIndex<Entry<Table>> {
  const column = notebookTables[table].named;
  const mine = new NameIndex<DraftRowOf<Table>>();
  for (const draft of drafts) {
    const name = nameIn(draft.cells, column);
    if (name !== null && mine.add(name, draft)) continue;
    nameless.push(draft);
    if (name === null) continue;
    const first = mine.get(name)?.origin.line;
    const repeated = refusal("name-twice", [], name, `stands in line ${first} too`, "give each its own line and name");
    findings.fault({ ...draft.origin, column }, repeated);
  }
  const index = new NameIndex<Entry<Table>>();
  for (const record of records) {
    const name = nameIn(record.cells, column) ?? "";
    const draft = mine.get(name) ?? null;
    index.add(name, { cells: record.cells as Entry<Table>["cells"], extra: record.extra, draft, record });
  }
  for (const draft of mine.bearers()) {
    index.add(nameIn(draft.cells, column) ?? "", { cells: draft.cells, extra: draft.extra, draft, record: null });
  }
  return index;
}

function nameIn(cells: object, column: string): string | null {
  const name: unknown = (cells as Readonly<Record<string, unknown>>)[column];
  return typeof name === "string" ? name : null;
}

/** Lays the folder's cells over the registry's: an empty cell is not known, and takes nothing away. */
export function layOver<Table extends TableName>(entry: Entry<Table>): void {
  if (entry.draft === null || entry.record === null) return;
  const { cells, faulty } = entry.draft;
  const said = Object.entries(cells).filter(([column, value]) => value !== null || faulty.has(column));
  entry.cells = { ...(entry.record.cells as Entry<Table>["cells"]), ...Object.fromEntries(said) };
  entry.extra = { ...entry.record.extra, ...entry.draft.extra };
}

/** Whether any of these cells of an entry has a fault, so that nothing may be made of it. */
export function tainted<Table extends TableName>(entry: Entry<Table>, ...columns: readonly string[]): boolean {
  const faulty = entry.draft?.faulty;
  return faulty !== undefined && faulty.size > 0 && columns.some((column) => faulty.has(column));
}

import { type ColumnsOf, notebookTables, type TableName, tableNames } from "@/lib/schemas/notebook/columns";
import type { DraftCellsOf, Origin } from "@/lib/schemas/notebook/rows";

/** A row as it was read: cells with a fault are null and named in `faulty`. */
export interface DraftRow<Cells> {
  readonly cells: Cells;
  readonly extra: Readonly<Record<string, string>>;
  readonly origin: Origin;
  readonly faulty: Set<string>;
  /** the text of a cell of this row, empty where there is none */
  written(column: string): string;
}

export type DraftRowOf<Table extends TableName> = DraftRow<DraftCellsOf<ColumnsOf<Table>>>;

/** One file of the folder as it was read. */
export interface DraftTable<Table extends TableName> {
  readonly rows: DraftRowOf<Table>[];
  /** the columns of its header, known or not; none where there is no such file */
  readonly present: ReadonlySet<string>;
  /** false where rows or their names could not be read: then a name that is missing may have stood there */
  readonly complete: boolean;
}

export type DraftNotebook = { readonly [Table in TableName]: DraftTable<Table> };

/** A file that is not there has no rows. */
export function absentTable<Table extends TableName>(): DraftTable<Table> {
  return { rows: [], present: new Set(), complete: true };
}

/** A file that is there and could not be read. */
export function unreadTable<Table extends TableName>(): DraftTable<Table> {
  return { rows: [], present: new Set(), complete: false };
}

export const notebookFiles: readonly string[] = tableNames.map((table) => notebookTables[table].file);

import type { Column, ColumnsOf, TableName } from "./columns";

/** The cells of a sound row: null where the cell is empty, which only an open column allows. */
export type CellsOf<Columns> = {
  readonly [Name in keyof Columns]: Columns[Name] extends Column<infer T, infer Needed>
    ? Needed extends true
      ? NonNullable<T>
      : NonNullable<T> | null
    : never;
};

/** The cells of a row that may have faults: any of them may be missing. */
export type DraftCellsOf<Columns> = {
  [Name in keyof Columns]: Columns[Name] extends Column<infer T> ? NonNullable<T> | null : never;
};

/** Where a row was read. */
export interface Origin {
  readonly file: string;
  readonly line: number;
}

/** One row. `extra`: cells of columns that nobody here reads and, in plants.csv, `score:TRAIT`. */
export interface Row<Cells> {
  readonly cells: Cells;
  readonly extra: Readonly<Record<string, string>>;
  /** of a row that was read from a folder */
  readonly origin?: Origin;
  /** of a row that stands for a record of the registry */
  readonly id?: string;
}

export type RowOf<Table extends TableName> = Row<CellsOf<ColumnsOf<Table>>>;

export type StewardRow = RowOf<"stewards">;
export type VarietyRow = RowOf<"varieties">;
export type GrowOutRow = RowOf<"growOuts">;
export type LotRow = RowOf<"lots">;
export type PlantRow = RowOf<"plants">;
export type TestRow = RowOf<"tests">;
export type LedgerRow = RowOf<"ledger">;

/** A steward's records as the rows of the seven files, whether they came from a folder or from the registry. */
export type Notebook = { readonly [Table in TableName]: readonly RowOf<Table>[] };

export function emptyNotebook(): Notebook {
  return { stewards: [], varieties: [], growOuts: [], lots: [], plants: [], tests: [], ledger: [] };
}

/** One further file as text: its columns, and its rows with the line where each was read. */
export interface FurtherTable {
  readonly file: string;
  readonly columns: readonly string[];
  readonly rows: readonly FurtherRow[];
}

export interface FurtherRow {
  readonly cells: Readonly<Record<string, string>>;
  readonly line?: number;
}

import type { Outcome } from "@/lib/science/outcome";

/** A column of a grid that is typed into. */
export interface GridColumn {
  readonly key: string;
  readonly name: string;
  /** numbers stand to the right in the narrow face */
  readonly kind: "words" | "number";
  /** in rem */
  readonly width: number;
  /** what may be written here, for the line below the grid: "1 to 9; 1 weak, 9 strong" */
  readonly hint: string;
  readonly inputMode: "text" | "numeric" | "decimal";
  /** the few answers that can be pressed instead of typed, each with its words */
  readonly choices: readonly { readonly text: string; readonly words: string }[];
  /** what is typed as it is kept, or why it cannot be; never asked of an empty cell */
  readonly read: (typed: string) => Outcome<string>;
}

/** A row: what is stored in its cells, by column; a cell that is not there is empty. */
export interface GridRow {
  readonly key: string;
  /** true where it was added here and is not stored yet */
  readonly added: boolean;
  readonly stored: Readonly<Record<string, string>>;
  /** what more there is to say of a cell: who scored; `open` where a person should look: another's score beside it, an older measure */
  readonly notes: Readonly<Record<string, { readonly words: string; readonly open: boolean }>>;
}

/** A place in the grid, counted from 0. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** A cell that is to be filled: its row and column by key. */
export interface CellChange {
  readonly row: string;
  readonly column: string;
  readonly text: string;
}

export function storedText(row: GridRow, column: string): string {
  return row.stored[column] ?? "";
}

import type { Grade } from "@/components/doubt/grade";
import type { Coat } from "@/components/seed-coat/coat";

/**
 * What stands in a cell. All but a plain string or number carry their words, so that a list can be filtered, read aloud and
 * printed; `sort` is what the column is sorted by (null: unknown, always last). An empty string is nothing to say, a null is unknown.
 */
export type Cell =
  | string
  | number
  | null
  | { readonly kind: "count"; readonly words: string; readonly sort: number | null; readonly grade?: Grade }
  | { readonly kind: "date"; readonly words: string; readonly sort: string | null }
  | {
      readonly kind: "link";
      readonly words: string;
      readonly href: string;
      readonly sort?: string | number;
      /** the variety's own mark before the words */
      readonly mark?: { readonly name: string; readonly crop?: string; readonly coat?: Coat | null };
    }
  | {
      readonly kind: "span";
      /** on 0..1 */
      readonly value: number | null;
      readonly low: number | null;
      readonly high: number | null;
      readonly grade: Grade;
      /** "32 of 50 (64 %), between 49 and 77 %" */
      readonly words: string;
      /** the figure printed beside the bar: "64 %" */
      readonly figure: string;
      /** a level to compare with, drawn across */
      readonly line?: number;
    }
  | { readonly kind: "waits"; readonly words: string; readonly sort?: string | number | null };

/** A column of a table. */
export interface Column {
  readonly key: string;
  readonly name: string;
  /** counts stand to the right in the narrow face; words to the left */
  readonly kind: "words" | "count" | "span";
  /** false where sorting says nothing */
  readonly sortable?: boolean;
  /** not shown until chosen */
  readonly apart?: boolean;
  /** on a phone: the lead of the entry, to its right, below it, or left out */
  readonly phone?: "lead" | "aside" | "under" | "none";
  /** a word before the value on a phone, where the value alone would not be understood */
  readonly phoneName?: string;
}

/** Where a column stands on a phone when nothing is said: the first leads, the others stand below. */
export function phonePlace(column: Column, place: number): NonNullable<Column["phone"]> {
  return column.phone ?? (place === 0 ? "lead" : "under");
}

/** A row: its id, and its cells by column key (a missing cell is unknown). */
export interface Row {
  readonly id: string;
  readonly cells: Readonly<Record<string, Cell>>;
}

/** What a cell is sorted by; undefined is unknown and stands last either way. */
export function sortValue(cell: Cell | undefined): string | number | undefined {
  if (cell === null || cell === undefined || cell === "") return undefined;
  if (typeof cell !== "object") return cell;
  if (cell.kind === "span") return cell.value ?? undefined;
  if (cell.kind === "count" || cell.kind === "date") return cell.sort ?? undefined;
  if (cell.sort === null) return undefined;
  return cell.sort ?? cell.words;
}

/** Numbers by size, words by code point: the order that both databases give. */
export function compareValues(a: string | number, b: string | number): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** A cell's words. */
export function cellWords(cell: Cell | undefined): string {
  if (cell === null || cell === undefined) return "";
  return typeof cell === "object" ? cell.words : String(cell);
}

/** Folded for search: small letters, without accents, blanks as one. */
export function folded(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().replace(/[’‘]/g, "'").replace(/\s+/g, " ").trim();
}

/** The rows in which every word of `filter` is found, in any cell, shown or not. */
export function matching(rows: readonly Row[], filter: string): readonly Row[] {
  const words = folded(filter).split(" ").filter(Boolean);
  if (words.length === 0) return rows;
  return rows.filter((row) => {
    const text = folded(Object.values(row.cells).map(cellWords).join(" "));
    return words.every((word) => text.includes(word));
  });
}

/** The longest cell of each column, by its words. */
export function widestCells(columns: readonly Column[], rows: readonly Row[]): Readonly<Record<string, Cell>> {
  const widest: Record<string, Cell> = {};
  for (const { key } of columns) {
    let most = -1;
    for (const row of rows) {
      const length = cellWords(row.cells[key]).length;
      if (length > most) {
        most = length;
        widest[key] = row.cells[key] ?? null;
      }
    }
  }
  return widest;
}

import { cellText, type Edits } from "./edits";
import type { CellChange, GridColumn, GridRow } from "./grid-types";
import { type Rectangle, rectangle, type Selection } from "./selection";

/**
 * Fills a selection with what stands in its first row; where one row alone is selected, with what stands above it. Nothing above the
 * first row: nothing is filled.
 */
export function filledDown(
  selection: Selection,
  rows: readonly GridRow[],
  columns: readonly GridColumn[],
  edits: Edits,
): CellChange[] {
  const { top, bottom, left, right } = rectangle(selection);
  const from = top === bottom ? top - 1 : top;
  const source = rows[from];
  if (!source) return [];
  return cellsIn({ top: from + 1, bottom, left, right }, rows, columns).map(({ row, column }) => ({
    row: row.key,
    column: column.key,
    text: cellText(edits, source, column.key),
  }));
}

/** Empties a selection. */
export function emptied(selection: Selection, rows: readonly GridRow[], columns: readonly GridColumn[]): CellChange[] {
  return cellsIn(rectangle(selection), rows, columns).map(({ row, column }) => ({
    row: row.key,
    column: column.key,
    text: "",
  }));
}

/** The texts of a selection, row by row. */
export function textsOf(
  selection: Selection,
  rows: readonly GridRow[],
  columns: readonly GridColumn[],
  edits: Edits,
): string[][] {
  const { top, bottom, left, right } = rectangle(selection);
  return rows
    .slice(top, bottom + 1)
    .map((row) => columns.slice(left, right + 1).map((column) => cellText(edits, row, column.key)));
}

function cellsIn({ top, bottom, left, right }: Rectangle, rows: readonly GridRow[], columns: readonly GridColumn[]) {
  return rows
    .slice(top, bottom + 1)
    .flatMap((row) => columns.slice(left, right + 1).map((column) => ({ row, column })));
}

import type { Place } from "./grid-types";

/** The cells that are chosen: a rectangle from where it began to where the focus is. */
export interface Selection {
  readonly anchor: Place;
  readonly focus: Place;
}

/** How many rows and columns there are. */
export interface Extent {
  readonly rows: number;
  readonly columns: number;
}

export interface Rectangle {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

export function selected(place: Place): Selection {
  return { anchor: place, focus: place };
}

/** The rectangle of a selection, both ends included. */
export function rectangle({ anchor, focus }: Selection): Rectangle {
  return {
    top: Math.min(anchor.row, focus.row),
    bottom: Math.max(anchor.row, focus.row),
    left: Math.min(anchor.column, focus.column),
    right: Math.max(anchor.column, focus.column),
  };
}

export function everything({ rows, columns }: Extent): Selection {
  return { anchor: { row: 0, column: 0 }, focus: { row: Math.max(0, rows - 1), column: Math.max(0, columns - 1) } };
}

/** The selection within the grid, after rows or columns have gone. */
export function within({ anchor, focus }: Selection, extent: Extent): Selection {
  return { anchor: clamped(anchor, extent), focus: clamped(focus, extent) };
}

function clamped({ row, column }: Place, { rows, columns }: Extent): Place {
  const inside = (value: number, count: number) => Math.max(0, Math.min(count - 1, value));
  return { row: inside(row, rows), column: inside(column, columns) };
}

const pageOfRows = 10;

/** Where a key leads: arrows a cell, with Ctrl to the edge; Home and End along the row, with Ctrl through the grid; pages ten rows. */
export function placeByKey(place: Place, key: string, ctrl: boolean, extent: Extent): Place | null {
  const { row, column } = place;
  const last = { row: extent.rows - 1, column: extent.columns - 1 };
  const to = (next: Place) => clamped(next, extent);
  switch (key) {
    case "ArrowUp":
      return to({ row: ctrl ? 0 : row - 1, column });
    case "ArrowDown":
      return to({ row: ctrl ? last.row : row + 1, column });
    case "ArrowLeft":
      return to({ row, column: ctrl ? 0 : column - 1 });
    case "ArrowRight":
      return to({ row, column: ctrl ? last.column : column + 1 });
    case "Home":
      return to({ row: ctrl ? 0 : row, column: 0 });
    case "End":
      return to({ row: ctrl ? last.row : row, column: last.column });
    case "PageUp":
      return to({ row: row - pageOfRows, column });
    case "PageDown":
      return to({ row: row + pageOfRows, column });
    default:
      return null;
  }
}

/** The cell after this one, row by row (before it with `back`); null at the last, where the Tab key leaves the grid. */
export function placeByTab({ row, column }: Place, back: boolean, extent: Extent): Place | null {
  const number = row * extent.columns + column + (back ? -1 : 1);
  if (number < 0 || number >= extent.rows * extent.columns) return null;
  return { row: Math.floor(number / extent.columns), column: number % extent.columns };
}

/*
 * The grid pattern of ARIA: the grid and its parts are boxes whose place is worked out here, so their roles are said aloud. A table's own
 * elements would not keep their roles once they are laid out so. Indices count from 1, the row of heads is the first.
 */
export function gridPart(label: string, helpId: string, rows: number, columns: number) {
  return {
    role: "grid",
    "aria-label": label,
    "aria-describedby": helpId,
    "aria-rowcount": rows + 1,
    "aria-colcount": columns,
    "aria-multiselectable": true,
  } as const;
}

export const headRowPart = { role: "row", "aria-rowindex": 1 } as const;
/** room that is no part of the grid */
export const noPart = { role: "presentation" } as const;

export function rowPart(row: number) {
  return { role: "row", "aria-rowindex": row + 2 } as const;
}

export function headPart(column: number) {
  return { role: "columnheader", "aria-colindex": column + 1 } as const;
}

/** The first cell of a row is its head. */
export function cellPart(column: number, chosen: boolean, refused: boolean) {
  return {
    role: column === 0 ? "rowheader" : "gridcell",
    "aria-colindex": column + 1,
    "aria-selected": chosen,
    "aria-invalid": refused || undefined,
  } as const;
}

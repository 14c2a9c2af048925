/*
 * The roles of a table's parts, said aloud in the markup: on a phone the rows are laid out as entries, and some browsers
 * forget what a table is as soon as its display is another.
 */
export const tableRole = { role: "table" } as const;
export const groupRole = { role: "rowgroup" } as const;
export const rowRole = { role: "row" } as const;
export const headRole = { role: "columnheader" } as const;
export const rowHeadRole = { role: "rowheader" } as const;
export const cellRole = { role: "cell" } as const;
/** room that is not part of the table */
export const noRole = { "aria-hidden": true } as const;

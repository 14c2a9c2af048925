export type Cell = string | number | null | undefined;

/** Rows as CSV of RFC 4180: a header, a comma between cells, CRLF after each row, quotes where a cell needs them. */
export function csvText(columns: readonly string[], rows: readonly Readonly<Record<string, Cell>>[]): string {
  const lines = [columns.map(written), ...rows.map((row) => columns.map((column) => written(row[column])))];
  return lines.map((cells) => `${cells.join(",")}\r\n`).join("");
}

function written(cell: Cell): string {
  if (cell === null || cell === undefined) return "";
  const text = String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

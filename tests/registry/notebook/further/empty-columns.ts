/** Columns that stand empty in every row: then nothing was tried of them. */
export function emptyColumns(file: string, columns: readonly string[], text: string): string[] {
  const rows = text
    .trim()
    .split("\r\n")
    .slice(1)
    .map((row) => row.match(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g) ?? []);
  return columns.flatMap((column, index) =>
    rows.some((row) => (row[index] ?? "").replace(/,$/, "") !== "") ? [] : [`${file} ${column}`],
  );
}

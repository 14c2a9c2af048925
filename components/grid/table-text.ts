/*
 * Cells as text, the way spreadsheets put them on the clipboard: a row a line, tabs between cells, and quotes around a cell that has a
 * tab, a quote or a line break in it, its own quotes doubled.
 */

/** Reads such text. A quote in the middle of a cell is a quote; one line break at the very end is no row. */
export function readTableText(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  const all = text.replace(/\r\n?/g, "\n").replace(/\n$/, "");
  if (all === "") return [];
  while (at <= all.length) {
    const cell = readCellText(all, at);
    row.push(cell.text);
    at = cell.end;
    if (all[at] !== "\t") {
      rows.push(row);
      row = [];
    }
    at += 1;
  }
  return rows;
}

/** One cell from `at` on, and where it ends: at a tab, a line break or the end. */
function readCellText(all: string, at: number): { text: string; end: number } {
  if (all[at] === '"') {
    let text = "";
    for (let place = at + 1; place < all.length; place += 1) {
      if (all[place] !== '"') text += all[place];
      else if (all[place + 1] === '"') {
        text += '"';
        place += 1;
      } else {
        const after = all[place + 1];
        // Text goes on behind the quote: then it was no quoted cell.
        if (after !== undefined && after !== "\t" && after !== "\n") break;
        return { text, end: place + 1 };
      }
    }
  }
  const found = all.slice(at).search(/[\t\n]/);
  const end = found < 0 ? all.length : at + found;
  return { text: all.slice(at, end), end };
}

/** Writes cells as such text. */
export function writeTableText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => row.map(quoted).join("\t")).join("\n");
}

function quoted(text: string): string {
  return /[\t\n\r"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

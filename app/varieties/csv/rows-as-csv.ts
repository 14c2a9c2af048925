import { stringify } from "csv-stringify/sync";
import { type Cell, type Column, compareValues, matching, type Row, sortValue } from "@/components/tables/cells";
import { readTableAddress, shownColumns } from "@/components/tables/table-address";

/**
 * A table as it stands in its address (filtered, sorted, the columns shown) as CSV. A cell that is sorted by a number gives that number:
 * shares 0 to 1, grams, counts; an unknown is empty. `units` are written behind the names of columns.
 */
export function tableAsCsv(
  parameters: Readonly<Record<string, string | string[]>>,
  columns: readonly Column[],
  rows: readonly Row[],
  units: Readonly<Record<string, string>> = {},
): string {
  const address = readTableAddress(parameters, columns);
  const shown = shownColumns(columns, address);
  const found = [...matching(rows, address.filter)];
  const { sort } = address;
  if (sort) {
    found.sort((a, b) => {
      const [one, other] = [sortValue(a.cells[sort.key]), sortValue(b.cells[sort.key])];
      if (one === undefined || other === undefined) return one === other ? 0 : one === undefined ? 1 : -1;
      return compareValues(one, other) * (sort.down ? -1 : 1);
    });
  }
  const head = shown.map(({ key, name }) =>
    [name.toLowerCase().replaceAll(" ", "_").replaceAll("-", "_"), units[key]].filter(Boolean).join("_"),
  );
  // Text that a spreadsheet would run as a formula is marked with an apostrophe.
  return stringify([head, ...found.map((row) => shown.map(({ key }) => plain(row.cells[key])))], {
    record_delimiter: "\r\n",
    escape_formulas: true,
  });
}

function plain(cell: Cell | undefined): string | number {
  if (cell === null || cell === undefined) return "";
  if (typeof cell !== "object") return cell;
  if (cell.kind === "span") return cell.value ?? "";
  if (cell.kind === "count") return cell.sort ?? "";
  if (cell.kind === "link" && typeof cell.sort === "number") return cell.sort;
  return cell.words;
}

/** The same as a file to be taken away. */
export function rowsAsCsv(
  request: Request,
  name: string,
  columns: readonly Column[],
  rows: readonly Row[],
  units: Readonly<Record<string, string>> = {},
): Response {
  const parameters = Object.fromEntries(new URL(request.url).searchParams);
  return new Response(tableAsCsv(parameters, columns, rows, units), {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": `attachment; filename="${name}.csv"`,
    },
  });
}

import { Parts, partOf } from "@/components/frame/parts";
import { DataTable, type DataTableProps } from "./data-table";
import { rowsAsked } from "./rows-asked";
import { readTableAddress, type SearchParameters, tableHref } from "./table-address";

/** Up to so many rows the browser has them all, and finds and sorts them as one types; of more, the server gives a part. */
const mostInBrowser = 500;
const mostInPart = 100;

/** A list that may have thousands of rows: a DataTable with all of them, or with the part that the address asks for. */
export function ListTable({
  parameters,
  rows,
  ...table
}: Omit<DataTableProps, "address" | "by" | "total" | "others"> & { parameters: SearchParameters }) {
  const address = readTableAddress(parameters, table.columns);
  if (rows.length <= mostInBrowser) {
    return <DataTable {...table} rows={rows} address={address} others={parameters} />;
  }
  const found = rowsAsked(rows, address);
  const asked = typeof parameters.page === "string" ? parameters.page : undefined;
  const { part, parts, from, to } = partOf(asked, found.length, mostInPart);
  const here = tableHref(table.path, address, parameters);
  return (
    <div className="stack">
      <DataTable
        {...table}
        rows={found.slice(from, to)}
        total={found.length}
        address={address}
        others={parameters}
        by="server"
      />
      <Parts
        part={part}
        parts={parts}
        of="the list"
        href={(page) => `${here}${here.includes("?") ? "&" : "?"}page=${page}`}
      />
    </div>
  );
}

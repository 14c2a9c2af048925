export { type Cell, type Column, cellWords, folded, type Row } from "./cells";
export { DataTable, type DataTableProps } from "./data-table";
export { ListTable } from "./list-table";
export { rowsAsked } from "./rows-asked";
export { type SimpleColumn, SimpleTable } from "./simple-table";
export { readTableAddress, type SearchParameters, shownColumns, type TableAddress, tableHref } from "./table-address";

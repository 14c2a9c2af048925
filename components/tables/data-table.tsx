"use client";

import {
  type ColumnDef,
  columnVisibilityFeature,
  createSortedRowModel,
  rowSortingFeature,
  tableFeatures,
  useTable,
} from "@tanstack/react-table";
import { useRouter } from "next/navigation";
import { type ReactNode, useDeferredValue, useId, useMemo } from "react";
import { wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type Column, compareValues, matching, type Row, sortValue } from "./cells";
import { ColumnChooser } from "./column-chooser";
import { tableRole } from "./roles";
import { SortChoice } from "./sort-choice";
import styles from "./table.module.css";
import { type SearchParameters, shownColumns, type TableAddress, tableHref } from "./table-address";
import { TableBody } from "./table-body";
import { TableHead } from "./table-head";
import tools from "./tools.module.css";
import { useTableState } from "./use-table-state";

const features = tableFeatures({ rowSortingFeature, columnVisibilityFeature, sortedRowModel: createSortedRowModel() });

export interface DataTableProps {
  /** what the list is, heard by those who do not see it: "All lots" */
  readonly caption: string;
  /** the word for a row, for counting: "lot" */
  readonly noun: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** how many rows there are in all, where the server filters */
  readonly total?: number;
  readonly path: string;
  readonly address: TableAddress;
  /** the page's other parameters, kept in every link */
  readonly others?: SearchParameters;
  /** "here": sorted and filtered in the browser (up to some 5,000 rows); "server": each change asks the page anew */
  readonly by?: "here" | "server";
  readonly filterLabel?: string;
  /** where the list is had as CSV; the table's own state is added to it */
  readonly csv?: string;
  /** what stands in place of the rows where there are none */
  readonly empty?: ReactNode;
}

/**
 * A list as a real table: sorted by its heads, filtered as one types, columns chosen, all of it in the address; on a phone each
 * row is an entry of two lines. Rows are data (see Cell), so that a page may hand over thousands. Long lists draw what is in
 * sight; on paper all rows are drawn.
 */
export function DataTable({
  caption,
  noun,
  columns,
  rows,
  total,
  path,
  address,
  others,
  by = "here",
  filterLabel = "Find in this list",
  csv,
  empty,
}: DataTableProps) {
  const router = useRouter();
  const filterId = useId();
  const { state, change } = useTableState(address, (next) => {
    const href = tableHref(path, next, others);
    if (by === "server") router.replace(href, { scroll: false });
    else window.history.replaceState(null, "", href);
  });
  const filter = useDeferredValue(state.filter);
  const data = useMemo(() => (by === "server" ? [...rows] : [...matching(rows, filter)]), [by, rows, filter]);
  const definitions = useMemo(
    () =>
      columns.map(
        (column): ColumnDef<typeof features, Row> => ({
          id: column.key,
          header: column.name,
          accessorFn: (row) => sortValue(row.cells[column.key]),
          enableSorting: column.sortable !== false,
          sortUndefined: "last",
          sortFn: (a, b, key) => compareValues(a.getValue<string | number>(key), b.getValue<string | number>(key)),
        }),
      ),
    [columns],
  );
  const shown = shownColumns(columns, state);
  const table = useTable({
    features,
    columns: definitions,
    data,
    getRowId: (row) => row.id,
    manualSorting: by === "server",
    state: {
      sorting: state.sort ? [{ id: state.sort.key, desc: state.sort.down }] : [],
      columnVisibility: Object.fromEntries(columns.map((column) => [column.key, shown.includes(column)])),
    },
  });
  const sorted = table.getRowModel().rows.map((row) => row.original);
  const all = total ?? rows.length;
  return (
    <div className={styles.frame}>
      <div className={tools.tools}>
        <form className={tools.filter} action={path} onSubmit={(event) => event.preventDefault()}>
          <KeptOnSubmit href={tableHref(path, { ...state, filter: "" }, others)} />
          <label htmlFor={filterId}>{filterLabel}</label>
          <input
            id={filterId}
            type="search"
            name="filter"
            autoComplete="off"
            value={state.filter}
            onChange={(event) => change({ ...state, filter: event.target.value }, "typing")}
          />
        </form>
        <p className={tools.count} role="status">
          {rowsInWords(sorted.length, all, noun, by)}
        </p>
        <SortChoice columns={shown} sort={state.sort} choose={(sort) => change({ ...state, sort })} />
        <ColumnChooser
          columns={columns}
          shown={shown.map((column) => column.key)}
          choose={(keys) => change({ ...state, columns: keys })}
        />
        {csv ? (
          <a className={tools.tool} href={tableHref(csv, state, others)} download>
            As CSV
          </a>
        ) : null}
      </div>
      <div className={styles.scroll} data-many={shown.length > 8 || undefined}>
        <table className={styles.table} {...tableRole} aria-rowcount={sorted.length + 1}>
          <caption className="heard">{caption}</caption>
          <TableHead
            columns={shown}
            sort={state.sort}
            href={(sort) => tableHref(path, { ...state, sort }, others)}
            choose={(sort) => change({ ...state, sort })}
          />
          <TableBody columns={shown} rows={sorted} />
        </table>
      </div>
      {sorted.length === 0 ? (
        <div className={styles.empty}>{empty ?? <p>Nothing in this list fits “{filter}”.</p>}</div>
      ) : null}
    </div>
  );
}

/** How many rows fit what was typed; where the server gives a part of them, how many of them are drawn. */
function rowsInWords(drawn: number, all: number, noun: string, by: "here" | "server"): string {
  if (drawn === all) return counted(all, noun);
  return by === "server"
    ? `${counted(all, noun)}, ${wholeNumber(drawn)} of them here`
    : `${wholeNumber(drawn)} of ${counted(all, noun)}`;
}

/** What else stands in the address, for a browser that sends the form itself. */
function KeptOnSubmit({ href }: { href: string }) {
  const kept = new URLSearchParams(href.split("?")[1] ?? "");
  return [...kept].map(([name, value]) => <input key={`${name} ${value}`} type="hidden" name={name} value={value} />);
}

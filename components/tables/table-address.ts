import type { Column } from "./cells";

/** The state of a table as it stands in the address: `?sort=-year&columns=lot,year&filter=wren`. */
export interface TableAddress {
  readonly sort: { readonly key: string; readonly down: boolean } | null;
  /** keys of the columns shown, in the table's own order; null: those that are shown at first */
  readonly columns: readonly string[] | null;
  readonly filter: string;
}

export type SearchParameters = Readonly<Record<string, string | readonly string[] | undefined>>;

/** Reads the state from a page's search parameters; what names no column is left out, never refused. */
export function readTableAddress(parameters: SearchParameters, columns: readonly Column[]): TableAddress {
  const sort = one(parameters.sort);
  const down = sort.startsWith("-");
  const key = down ? sort.slice(1) : sort;
  const asked = many(parameters.columns);
  const shown = columns.map((column) => column.key).filter((each) => asked.includes(each));
  return {
    sort: columns.some((column) => column.key === key && column.sortable !== false) ? { key, down } : null,
    columns: shown.length > 0 ? shown : null,
    filter: one(parameters.filter),
  };
}

/** The address of a state on `path`; parameters of the page that are not the table's own are kept. */
export function tableHref(path: string, state: TableAddress, others: SearchParameters = {}): string {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(others)) {
    if (["sort", "columns", "filter", "page"].includes(name)) continue;
    for (const each of many(value)) query.append(name, each);
  }
  if (state.filter !== "") query.set("filter", state.filter);
  if (state.sort) query.set("sort", `${state.sort.down ? "-" : ""}${state.sort.key}`);
  if (state.columns) query.set("columns", state.columns.join(","));
  const text = query.toString().replaceAll("%2C", ",");
  return text === "" ? path : `${path}?${text}`;
}

/** The next sort when a column's head is pressed: up, then down, then up. */
export function nextSort(sort: TableAddress["sort"], key: string): { key: string; down: boolean } {
  return { key, down: sort?.key === key ? !sort.down : false };
}

/** Which columns stand in the table. */
export function shownColumns(columns: readonly Column[], state: TableAddress): readonly Column[] {
  return columns.filter((column) => (state.columns ? state.columns.includes(column.key) : !column.apart));
}

function one(value: string | readonly string[] | undefined): string {
  if (value === undefined) return "";
  return typeof value === "string" ? value : (value[0] ?? "");
}

function many(value: string | readonly string[] | undefined): string[] {
  if (value === undefined) return [];
  const list = typeof value === "string" ? [value] : [...value];
  return list.flatMap((each) => each.split(",")).filter(Boolean);
}

import { columnNames, type Narrowing, tableNames } from "@/lib/db";
import { basicSets, type HiddenByItself, hiddenForReading, hiddenForWriting } from "./hidden-now";
import { hanging, type SeenTable } from "./hidden-rows";
import { type PrivateColumns, privateColumns } from "./private-columns";
import type { Viewer } from "./viewer";

/** What a viewer finds in place of the tables: for reading, and inside an operation that writes. */
export function narrowingsOf(viewer: Viewer): { readonly read: Narrowing; readonly write: Narrowing } {
  return {
    read: narrowing(viewer, hiddenForReading(viewer), privateColumns(viewer)),
    write: narrowing(viewer, hiddenForWriting(viewer), {}),
  };
}

const leftOut: ReadonlySet<string> = new Set(["NeighbourSource.varietyId", "Container.placeId", "ChangeSet.undoesId"]);

function narrowing(
  viewer: Viewer,
  hidden: HiddenByItself,
  columns: Readonly<Partial<Record<SeenTable, readonly PrivateColumns[]>>>,
): Narrowing {
  const hideable = tablesThatHide(hidden);
  const sets = [
    ...basicSets(viewer),
    ...inOrder(hideable).map((table) => ({ name: `hidden_${table}`, rows: hiddenIds(table, hidden, hideable) })),
  ];
  const tables = new Map<string, string>();
  for (const table of tableNames) {
    const where = seenRows(table, hidden, hideable);
    const values = { ...blanked(table, hideable), ...masked(columns[table] ?? []) };
    if (where.length === 0 && Object.keys(values).length === 0) continue;
    const list = Object.keys(values).length === 0 ? "x.*" : columnsOf(table, values).join(", ");
    const rows = `SELECT ${list} FROM WHOLE."${table}" x`;
    tables.set(table, where.length === 0 ? rows : `${rows} WHERE ${where.join(" AND ")}`);
  }
  return { sets, tables };
}

/** The tables of which a row can be hidden, by itself or by what it hangs on. */
function tablesThatHide(hidden: HiddenByItself): ReadonlySet<SeenTable> {
  const found = new Set(Object.keys(hidden) as SeenTable[]);
  for (let size = -1; size !== found.size; ) {
    size = found.size;
    for (const table of tableNames)
      if (Object.values(hanging[table]?.hide ?? {}).some((each) => found.has(each))) found.add(table);
  }
  return found;
}

/** Each after those that it hangs on. */
function inOrder(tables: ReadonlySet<SeenTable>): SeenTable[] {
  const done = new Set<SeenTable>();
  const visit = (table: SeenTable) => {
    if (done.has(table) || !tables.has(table)) return;
    for (const each of Object.values(hanging[table]?.hide ?? {})) if (each !== table) visit(each);
    done.add(table);
  };
  for (const table of tables) visit(table);
  return [...done];
}

function links(table: SeenTable, hideable: ReadonlySet<SeenTable>): [string, SeenTable][] {
  return Object.entries(hanging[table]?.hide ?? {}).filter(([, to]) => hideable.has(to));
}

function hiddenIds(table: SeenTable, hidden: HiddenByItself, hideable: ReadonlySet<SeenTable>): string {
  const reasons = [
    ...(hidden[table] ? [`(${hidden[table]})`] : []),
    ...links(table, hideable).map(([column, to]) => `x."${column}" IN (SELECT "id" FROM "hidden_${to}")`),
  ];
  return `SELECT x."id" FROM WHOLE."${table}" x WHERE ${reasons.join(" OR ")}`;
}

function seenRows(table: SeenTable, hidden: HiddenByItself, hideable: ReadonlySet<SeenTable>): string[] {
  return [
    ...(hidden[table] ? [`NOT (${hidden[table]})`] : []),
    ...links(table, hideable).map(
      ([column, to]) => `(x."${column}" IS NULL OR x."${column}" NOT IN (SELECT "id" FROM "hidden_${to}"))`,
    ),
  ];
}

/**
 * A naming that is left out altogether. Other namings of a hidden row stay, an id that leads nowhere: what they name is not there, and a value
 * worked out in their place could not be looked up by its index.
 */
function blanked(table: SeenTable, hideable: ReadonlySet<SeenTable>): Record<string, string> {
  const naming = Object.entries(hanging[table]?.blank ?? {}).filter(
    ([column, to]) => hideable.has(to) && leftOut.has(`${table}.${column}`),
  );
  return Object.fromEntries(
    naming.map(([column, to]) => [
      column,
      `CASE WHEN x."${column}" NOT IN (SELECT "id" FROM "hidden_${to}") THEN x."${column}" END`,
    ]),
  );
}

function masked(columns: readonly PrivateColumns[]): Record<string, string> {
  return Object.fromEntries(
    columns.flatMap(({ columns: each, seenIf }) =>
      Object.entries(each).map(([column, instead]) => {
        const otherwise = instead === null ? "" : ` ELSE '${instead}'`;
        return [column, `CASE WHEN ${seenIf} THEN x."${column}"${otherwise} END`];
      }),
    ),
  );
}

function columnsOf(table: SeenTable, values: Readonly<Record<string, string>>): string[] {
  return columnNames(table).map((name) => (values[name] ? `${values[name]} AS "${name}"` : `x."${name}"`));
}

import { Prisma } from "@/prisma/generated/sqlite/client";
import type { Database } from "./client";

/** A statement or a piece of one, with its arguments in place: sql`SELECT ... WHERE "id" = ${id}`. */
export const { sql, join: joined, raw: rawSql } = Prisma;
export type Sql = Prisma.Sql;

type KindOf<V> = [NonNullable<V>] extends [boolean] ? "flag" : [NonNullable<V>] extends [number] ? "number" : "text";

/** What a column holds; a flag comes as true or false from every engine. Any of them may be null. */
export type ColumnKind = "text" | "number" | "flag";

/** A SELECT with the columns that it gives, by name. */
export interface Selection<Row> {
  readonly columns: { readonly [Column in keyof Row]-?: KindOf<Row[Column]> };
  readonly rows: Sql;
  /** never there: it only tells the compiler what a row is */
  readonly row?: Row;
}

/** A SELECT whose rows come under a value that many of them share: a ledger's entries under their lot. */
export interface Gathered<Row> extends Selection<Row> {
  /** the column that they come under: text, and none of theirs */
  readonly under: string;
  /** the column of the SELECT that puts the rows under one value in order */
  readonly by: string;
}

interface AnySelection {
  readonly columns: Readonly<Record<string, ColumnKind>>;
  readonly rows: Sql;
  readonly row?: unknown;
  readonly under?: string;
  readonly by?: string;
}

type RowsOf<S extends AnySelection> = S extends { readonly under: string }
  ? ReadonlyMap<string, Exclude<S["row"], undefined>[]>
  : Exclude<S["row"], undefined>[];

/**
 * Sends several SELECTs as one statement and gives the rows of each by its name, in the order that the SELECT asks for. Each comes back as
 * one JSON text of lists, which is several times faster to take apart than rows one by one, and all of them show the registry at one moment.
 * Numbers keep every digit; whole ones are exact up to 2^53. A column that the SELECT does not give makes the database refuse the statement.
 */
export async function readTogether<S extends Readonly<Record<string, AnySelection>>>(
  db: Pick<Database, "engine" | "read">,
  selections: S,
): Promise<{ [Name in keyof S]: RowsOf<S[Name]> }> {
  const dialect = db.engine === "postgresql" ? postgresql : sqlite;
  const parts = Object.entries(selections).map(
    ([name, selection]) => sql`(${writtenAs(dialect, selection)}) AS ${rawSql(`"${name}"`)}`,
  );
  const [found] = await db.read.$queryRaw<Record<string, string>[]>`SELECT ${joined(parts)}`;
  const read: [string, unknown][] = [];
  for (const [name, selection] of Object.entries(selections)) {
    const text = found?.[name] ?? "[]";
    read.push([name, takenApart(text, selection)]);
    // A large registry's rows take tens of milliseconds to take apart: others come between.
    if (text.length > 500_000) await new Promise((resolve) => setImmediate(resolve));
  }
  return Object.fromEntries(read) as { [Name in keyof S]: RowsOf<S[Name]> };
}

/** The same of a single SELECT. */
export async function readRows<Row>(db: Pick<Database, "engine" | "read">, selection: Selection<Row>): Promise<Row[]> {
  return (await readTogether(db, { rows: selection as AnySelection })).rows as Row[];
}

/** How an engine writes lists as JSON text. */
interface Dialect {
  value(column: string, kind: ColumnKind): string;
  /** rows as lists in one list; none: an empty one */
  rows(values: readonly string[], order: string): string;
  /** the rows under each value, with it, in one list */
  under(rows: string): string;
}

const sqlite: Dialect = {
  // SQLite keeps a flag as 0 or 1.
  value: (column, kind) =>
    kind === "flag" ? `json(CASE ${column} WHEN 1 THEN 'true' WHEN 0 THEN 'false' END)` : column,
  rows: (values, order) => `json_group_array(json_array(${values.join(", ")})${order})`,
  under: (rows) => `'[' || COALESCE(group_concat('[' || json_quote(g."under") || ',' || ${rows} || ']'), '') || ']'`,
};

const postgresql: Dialect = {
  value: (column) => column,
  rows: (values, order) => `COALESCE(json_agg(json_build_array(${values.join(", ")})${order}), '[]')::text`,
  under: (rows) => `'[' || COALESCE(string_agg('[' || to_json(g."under") || ',' || ${rows} || ']', ','), '') || ']'`,
};

function writtenAs(dialect: Dialect, { columns, rows, under, by }: AnySelection): Sql {
  const values = Object.entries(columns).map(([column, kind]) => dialect.value(`q."${column}"`, kind));
  if (under === undefined) return sql`SELECT ${rawSql(dialect.rows(values, ""))} FROM (${rows}) q`;
  const list = dialect.rows(values, ` ORDER BY q."${by}"`);
  const groups = sql`SELECT q.${rawSql(`"${under}" AS "under", ${list} AS "list"`)} FROM (${rows}) q GROUP BY q.${rawSql(`"${under}"`)}`;
  return sql`SELECT ${rawSql(dialect.under('g."list"'))} FROM (${groups}) g`;
}

function takenApart(text: string, { columns, under }: AnySelection): unknown {
  const row = rowMaker(Object.keys(columns));
  if (under === undefined) return (JSON.parse(text) as unknown[][]).map(row);
  return new Map((JSON.parse(text) as [string, unknown[][]][]).map(([value, rows]) => [value, rows.map(row)]));
}

type RowMaker = (values: readonly unknown[]) => unknown;

const makers = new Map<string, RowMaker>();

/**
 * Makes a row of its values in the order of the columns. The function is written out for each set of columns: field after field in a loop takes longer
 * than the database does. Columns are words of this code, never of a request.
 */
function rowMaker(columns: readonly string[]): RowMaker {
  const key = columns.join(" ");
  const known = makers.get(key);
  if (known) return known;
  const fields = columns.map((column, place) => `${JSON.stringify(column)}: values[${place}]`);
  const made = new Function("values", `return { ${fields.join(", ")} };`) as RowMaker;
  makers.set(key, made);
  return made;
}

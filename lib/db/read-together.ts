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

interface AnySelection {
  readonly columns: Readonly<Record<string, ColumnKind>>;
  readonly rows: Sql;
  readonly row?: unknown;
}

type RowsOf<S extends AnySelection> = Exclude<S["row"], undefined>[];

/**
 * Sends several SELECTs as one statement and gives the rows of each by its name, in the order that the SELECT asks for. Each comes back as
 * one JSON text, which is several times faster to take apart than rows one by one, and all of them show the registry at one moment.
 * Numbers keep every digit; whole ones are exact up to 2^53. A column that the SELECT does not give makes the database refuse the statement.
 */
export async function readTogether<S extends Readonly<Record<string, AnySelection>>>(
  db: Pick<Database, "engine" | "read">,
  selections: S,
): Promise<{ [Name in keyof S]: RowsOf<S[Name]> }> {
  const parts = Object.entries(selections).map(([name, { columns, rows }]) => {
    const written = db.engine === "postgresql" ? postgresqlArray(columns) : sqliteArray(columns);
    return sql`(SELECT ${rawSql(written)} FROM (${rows}) q) AS ${rawSql(`"${name}"`)}`;
  });
  const [found] = await db.read.$queryRaw<Record<string, string>[]>`SELECT ${joined(parts)}`;
  const read: [string, unknown][] = [];
  for (const [name, text] of Object.entries(found ?? {})) {
    read.push([name, JSON.parse(text)]);
    // A large registry's rows take tens of milliseconds to take apart: others come between.
    if (text.length > 500_000) await new Promise((resolve) => setImmediate(resolve));
  }
  return Object.fromEntries(read) as { [Name in keyof S]: RowsOf<S[Name]> };
}

/** The same of a single SELECT. */
export async function readRows<Row>(db: Pick<Database, "engine" | "read">, selection: Selection<Row>): Promise<Row[]> {
  return (await readTogether(db, { rows: selection as AnySelection })).rows as Row[];
}

function postgresqlArray(columns: AnySelection["columns"]): string {
  const list = Object.keys(columns).map((column) => `q."${column}"`);
  return `COALESCE(json_agg((SELECT row_to_json(r) FROM (SELECT ${list.join(", ")}) r)), '[]')::text`;
}

/** SQLite keeps a flag as 0 or 1. */
function sqliteArray(columns: AnySelection["columns"]): string {
  const list = Object.entries(columns).map(([column, kind]) => {
    const value = `q."${column}"`;
    return `'${column}', ${kind === "flag" ? `json(CASE ${value} WHEN 1 THEN 'true' WHEN 0 THEN 'false' END)` : value}`;
  });
  return `json_group_array(json_object(${list.join(", ")}))`;
}

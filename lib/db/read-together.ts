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
  const names = Object.keys(selections);
  const parts = names.map((name) => {
    const { columns, rows } = selections[name] as AnySelection;
    return sql`(${gathered(db.engine, Object.keys(columns))} FROM (${rows}) q) AS ${rawSql(`"${name}"`)}`;
  });
  const [found] = await db.read.$queryRaw<Record<string, string>[]>`SELECT ${joined(parts)}`;
  const read = names.map((name) => [name, rowsOf(selections[name] as AnySelection, found?.[name] ?? "[]")]);
  return Object.fromEntries(read);
}

/** The same of a single SELECT. */
export async function readRows<Row>(db: Pick<Database, "engine" | "read">, selection: Selection<Row>): Promise<Row[]> {
  return (await readTogether(db, { rows: selection as AnySelection })).rows as Row[];
}

function gathered(engine: Database["engine"], columns: readonly string[]): Sql {
  const list = columns.map((column) => `q."${column}"`).join(", ");
  return rawSql(
    engine === "postgresql"
      ? `SELECT COALESCE(json_agg(json_build_array(${list})), '[]')::text`
      : `SELECT json_group_array(json_array(${list}))`,
  );
}

function rowsOf({ columns }: AnySelection, text: string): Record<string, unknown>[] {
  const kinds = Object.entries(columns);
  return (JSON.parse(text) as unknown[][]).map((values) => {
    const row: Record<string, unknown> = {};
    for (const [place, [name, kind]] of kinds.entries()) {
      const value = values[place];
      row[name] = kind === "flag" && value !== null ? Boolean(value) : value;
    }
    return row;
  });
}

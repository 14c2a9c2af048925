import type { Client, Transaction } from "./client";
import type { Engine } from "./location";

/** A column that points to another table's row. */
export interface Reference {
  readonly table: string;
  readonly column: string;
  readonly to: string;
}

/** Every foreign key, as the database itself says. */
export async function references(db: Client | Transaction, engine: Engine): Promise<Reference[]> {
  const sql =
    engine === "sqlite"
      ? `SELECT m.name AS "table", f."from" AS "column", f."table" AS "to" FROM sqlite_master m, pragma_foreign_key_list(m.name) f WHERE m.type = 'table' ORDER BY 1, 2`
      : `SELECT c.relname AS "table", a.attname AS "column", t.relname AS "to" FROM pg_constraint k JOIN pg_class c ON c.oid = k.conrelid
         JOIN pg_class t ON t.oid = k.confrelid JOIN pg_attribute a ON a.attrelid = k.conrelid AND a.attnum = k.conkey[1]
         WHERE k.contype = 'f' AND k.connamespace = current_schema()::regnamespace ORDER BY 1, 2`;
  return db.$queryRawUnsafe<Reference[]>(sql);
}

/** The names of a database's check constraints with their tables, in order. */
export async function checkConstraints(
  db: Client | Transaction,
  engine: Engine,
): Promise<{ table: string; name: string }[]> {
  if (engine === "postgresql") {
    return db.$queryRawUnsafe(
      `SELECT c.relname AS "table", k.conname AS "name" FROM pg_constraint k JOIN pg_class c ON c.oid = k.conrelid
       WHERE k.contype = 'c' AND k.connamespace = current_schema()::regnamespace ORDER BY 1, 2`,
    );
  }
  const tables = await db.$queryRawUnsafe<{ name: string; sql: string }[]>(
    "SELECT name, sql FROM sqlite_master WHERE type = 'table' AND sql IS NOT NULL ORDER BY name",
  );
  return tables.flatMap((table) =>
    [...table.sql.matchAll(/CONSTRAINT "(\w+)" CHECK/g)].map((found) => ({ table: table.name, name: found[1] ?? "" })),
  );
}

/**
 * Takes the write lock for the rest of a transaction, before anything is read in it: one change set at a time, so that their numbers follow each
 * other. SQLite waits for another process at the first statement alone; one that has read already would be turned away by what the other wrote.
 */
export async function lockWrites(tx: Transaction, engine: Engine): Promise<void> {
  await tx.$executeRawUnsafe(
    engine === "postgresql"
      ? "SELECT pg_advisory_xact_lock(708641)"
      : 'UPDATE "ChangeSet" SET "number" = "number" WHERE 0',
  );
}

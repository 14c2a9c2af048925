import { readFileSync } from "node:fs";
import path from "node:path";
import { checkConstraints, references } from "./catalogue";
import type { Database } from "./client";

/** A check of check-constraints.json. */
interface ListedCheck {
  readonly table: string;
  readonly name: string;
  readonly check: string;
}

function listedChecks(root: string): ListedCheck[] {
  return JSON.parse(
    readFileSync(path.join(/* turbopackIgnore: true */ root, "prisma", "check-constraints.json"), "utf8"),
  ) as ListedCheck[];
}

/** What SQLite itself finds wrong in the file: pages, indexes, values that a column may not hold. PostgreSQL looks after its own files. */
export async function fileFaults(db: Database): Promise<string[]> {
  if (db.engine !== "sqlite") return [];
  const rows = await db.read.$queryRawUnsafe<{ integrity_check: string }[]>("PRAGMA integrity_check(100)");
  return rows.map((row) => row.integrity_check).filter((line) => line !== "ok");
}

/** Rows that point to a row that is not there, by the column that points. */
export async function brokenReferences(
  db: Database,
): Promise<{ table: string; column: string; to: string; ids: string[] }[]> {
  const broken = [];
  for (const { table, column, to } of await references(db.read, db.engine)) {
    const rows = await db.read.$queryRawUnsafe<{ id: string }[]>(
      `SELECT t."id" FROM "${table}" t WHERE t."${column}" IS NOT NULL AND NOT EXISTS (SELECT 1 FROM "${to}" o WHERE o."id" = t."${column}") LIMIT 20`,
    );
    if (rows.length > 0) broken.push({ table, column, to, ids: rows.map((row) => row.id) });
  }
  return broken;
}

/** Rows that a check of the list refuses. */
export async function failedChecks(
  db: Database,
  root: string = process.cwd(),
): Promise<{ table: string; name: string; ids: string[] }[]> {
  const failed = [];
  for (const { table, name, check } of listedChecks(root)) {
    const rows = await db.read.$queryRawUnsafe<{ id: string }[]>(
      `SELECT "id" FROM "${table}" WHERE NOT (${check}) LIMIT 20`,
    );
    if (rows.length > 0) failed.push({ table, name, ids: rows.map((row) => row.id) });
  }
  return failed;
}

/** Checks of the list that the database does not hold. */
export async function missingChecks(db: Database, root: string = process.cwd()): Promise<string[]> {
  const held = new Set((await checkConstraints(db.read, db.engine)).map(({ table, name }) => `${table} ${name}`));
  return listedChecks(root)
    .filter(({ table, name }) => !held.has(`${table} ${name}`))
    .map(({ name }) => name);
}

/** How many rows each table has, by its name in order. */
export async function rowCounts(db: Database): Promise<Record<string, number>> {
  const tables = await db.read.$queryRawUnsafe<{ name: string }[]>(
    db.engine === "sqlite"
      ? `SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name <> '_prisma_migrations' ORDER BY name`
      : `SELECT tablename AS name FROM pg_tables WHERE schemaname = current_schema() AND tablename <> '_prisma_migrations' ORDER BY tablename`,
  );
  const counts: Record<string, number> = {};
  for (const { name } of tables) {
    const [row] = await db.read.$queryRawUnsafe<{ n: number | bigint }[]>(`SELECT COUNT(*) AS n FROM "${name}"`);
    counts[name] = Number(row?.n ?? 0);
  }
  return counts;
}

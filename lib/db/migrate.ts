import { createHash, randomUUID } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import Database from "better-sqlite3";
import pg from "pg";
import type { Database as OpenDatabase } from "./client";
import type { Location } from "./location";
import { storageFaultOf } from "./storage-fault";

/** What stands in the way of migrating, as a sentence that says what to do. */
export class MigrationRefused extends Error {}

interface Migration {
  readonly name: string;
  readonly sql: string;
  readonly checksum: string;
}

interface Applied {
  readonly migration_name: string;
  readonly checksum: string;
  readonly finished_at: unknown;
}

/** The folder of migrations, one history an engine. */
function migrationsOf(engine: string, root: string): Migration[] {
  const folder = path.join(root, "prisma", "migrations", engine);
  return readdirSync(folder)
    .filter((name) => existsSync(path.join(folder, name, "migration.sql")))
    .sort()
    .map((name) => {
      const sql = readFileSync(path.join(folder, name, "migration.sql"), "utf8");
      return { name, sql, checksum: createHash("sha256").update(sql).digest("hex") };
    });
}

/** Which migrations are still to be applied; refuses a history that is not ours. */
function pending(all: Migration[], applied: Applied[], where: string): Migration[] {
  for (const row of applied) {
    const known = all.find((migration) => migration.name === row.migration_name);
    if (!known) {
      throw new MigrationRefused(
        `${where} was written by a newer release (it knows "${row.migration_name}"); start that release, or restore an older backup.`,
      );
    }
    if (known.checksum !== row.checksum) {
      throw new MigrationRefused(
        `The migration "${known.name}" was changed after it was applied to ${where}; take its file from the release.`,
      );
    }
    if (!row.finished_at) {
      throw new MigrationRefused(
        `The migration "${known.name}" never finished on ${where}; restore the newest backup.`,
      );
    }
  }
  return all.filter((migration) => !applied.some((row) => row.migration_name === migration.name));
}

const columns =
  "id VARCHAR(36) PRIMARY KEY NOT NULL, checksum VARCHAR(64) NOT NULL, finished_at TIMESTAMP_KIND, migration_name VARCHAR(255) NOT NULL, " +
  "logs TEXT, rolled_back_at TIMESTAMP_KIND, started_at TIMESTAMP_KIND NOT NULL DEFAULT CURRENT_TIMESTAMP, applied_steps_count INTEGER NOT NULL DEFAULT 0";
/** Prisma's own bookkeeping table, so that its command line agrees with what was done here. */
const bookkeeping = (timestampKind: string) =>
  `CREATE TABLE IF NOT EXISTS "_prisma_migrations" (${columns.replaceAll("TIMESTAMP_KIND", timestampKind)})`;

/** What was applied to a registry, and what this release would still apply. */
export interface MigrationState {
  readonly applied: readonly { readonly name: string; readonly checksum: string }[];
  readonly pending: readonly string[];
}

const standing =
  "SELECT migration_name, checksum, CASE WHEN finished_at IS NULL THEN NULL ELSE 'yes' END AS finished_at " +
  'FROM "_prisma_migrations" WHERE rolled_back_at IS NULL ORDER BY migration_name';

/** Looks which migrations stand in an SQLite registry that is not open yet, and writes nothing. Refused as migrating would be. */
export function migrationStateOfFile(location: Location, root: string = process.cwd()): MigrationState {
  const db = new Database(location.url, { fileMustExist: true });
  try {
    return stateOf(db.prepare(standing).all() as Applied[], location, root);
  } finally {
    db.close();
  }
}

/** Looks which migrations stand in an open registry, through its own connection. Refused as migrating would be. */
export async function migrationState(
  db: Pick<OpenDatabase, "read" | "location">,
  root: string = process.cwd(),
): Promise<MigrationState> {
  return stateOf(await db.read.$queryRawUnsafe<Applied[]>(standing), db.location, root);
}

function stateOf(rows: Applied[], location: Location, root: string): MigrationState {
  const where = location.engine === "sqlite" ? location.url : "the shared database";
  return {
    applied: rows.map((row) => ({ name: row.migration_name, checksum: row.checksum })),
    pending: pending(migrationsOf(location.engine, root), rows, where).map((migration) => migration.name),
  };
}

/** Brings a registry's tables up to this release. Returns the names of the migrations that were applied. */
export async function migrate(location: Location, root: string = process.cwd()): Promise<string[]> {
  return location.engine === "sqlite" ? migrateSqlite(location, root) : migratePostgresql(location, root);
}

/** How long one that opens a registry waits for another that is migrating it, in milliseconds: the tables of a large one are rebuilt in less. */
const patience = 120_000;

function migrateSqlite(location: Location, root: string): string[] {
  mkdirSync(path.dirname(location.url), { recursive: true, mode: 0o700 });
  madeForOwner(location.url);
  const db = new Database(location.url, { timeout: patience });
  try {
    inLogAhead(db);
    db.pragma("synchronous = FULL");
    // A table that is rebuilt loses its rows' references for a moment, so they are checked before the commit instead.
    db.pragma("foreign_keys = OFF");
    const all = migrationsOf("sqlite", root);
    const left = () => pending(all, appliedTo(db), location.url);
    const done: string[] = [];
    for (const { name } of left()) {
      // Another process may have migrated since: what is left is asked again with the file held for writing.
      const step = db.transaction(() => {
        const migration = left().find((each) => each.name === name);
        if (migration) applyTo(db, migration, location);
        return migration !== undefined;
      });
      if (step.immediate()) done.push(name);
    }
    return done;
  } finally {
    db.close();
  }
}

/** Turns the log ahead of writing on. SQLite does not wait by itself while another process turns it on for the same new file. */
function inLogAhead(db: Database.Database): void {
  const until = Date.now() + patience;
  while (true) {
    try {
      db.pragma("journal_mode = WAL");
      return;
    } catch (error) {
      if (storageFaultOf(error, db.name)?.kind !== "held-by-another" || Date.now() > until) throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20);
    }
  }
}

function appliedTo(db: Database.Database): Applied[] {
  db.exec(bookkeeping("DATETIME"));
  return db
    .prepare('SELECT migration_name, checksum, finished_at FROM "_prisma_migrations" WHERE rolled_back_at IS NULL')
    .all() as Applied[];
}

function applyTo(db: Database.Database, migration: Migration, location: Location): void {
  db.exec(migration.sql);
  const broken = db.pragma("foreign_key_check") as unknown[];
  if (broken.length > 0) {
    throw new MigrationRefused(
      `"${migration.name}" would leave ${broken.length} broken references in ${location.url}; nothing was changed.`,
    );
  }
  const now = new Date().toISOString();
  db.prepare(
    'INSERT INTO "_prisma_migrations" (id, checksum, migration_name, started_at, finished_at, applied_steps_count) VALUES (?, ?, ?, ?, ?, 1)',
  ).run(randomUUID(), migration.checksum, migration.name, now, now);
}

/** A new registry is its owner's alone, and so are its logs, which take the file's rights; SQLite itself would let everybody read them. */
function madeForOwner(file: string): void {
  try {
    writeFileSync(file, "", { flag: "wx", mode: 0o600 });
  } catch {
    // it is there already, or cannot be made, which SQLite tells next
  }
}

async function migratePostgresql(location: Location, root: string): Promise<string[]> {
  const client = new pg.Client({ connectionString: location.url });
  await client.connect();
  try {
    // One at a time; the lock goes with the session, however that ends.
    await client.query("SELECT pg_advisory_lock(708642)");
    await client.query(bookkeeping("TIMESTAMPTZ"));
    const { rows } = await client.query(
      'SELECT migration_name, checksum, finished_at FROM "_prisma_migrations" WHERE rolled_back_at IS NULL',
    );
    const todo = pending(migrationsOf("postgresql", root), rows as Applied[], "the shared database");
    for (const migration of todo) {
      await client.query("BEGIN");
      try {
        await client.query(migration.sql);
        await client.query(
          'INSERT INTO "_prisma_migrations" (id, checksum, migration_name, finished_at, applied_steps_count) VALUES ($1, $2, $3, now(), 1)',
          [randomUUID(), migration.checksum, migration.name],
        );
        await client.query("COMMIT");
      } catch (error) {
        await client.query("ROLLBACK");
        throw error;
      }
    }
    return todo.map((migration) => migration.name);
  } finally {
    await client.end();
  }
}

import { cpSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { type Location, migrate } from "@/lib/db";
import { temporaryFolder } from "@/tests/setup/registry";

function emptyPlace(): { location: Location; root: string } {
  const folder = temporaryFolder();
  const root = path.join(folder, "release");
  mkdirSync(root);
  cpSync("prisma/migrations", path.join(root, "prisma/migrations"), { recursive: true });
  return {
    location: { engine: "sqlite", url: path.join(folder, "registry.sqlite"), folder, demonstration: false },
    root,
  };
}

const known = readdirSync("prisma/migrations/sqlite")
  .filter((name) => !name.includes("."))
  .sort();

function query(location: Location, sql: string): unknown {
  const db = new Database(location.url);
  try {
    return db.prepare(sql).all();
  } finally {
    db.close();
  }
}

function run(location: Location, sql: string): void {
  const db = new Database(location.url);
  db.exec(sql);
  db.close();
}

describe("migrating", () => {
  it("brings an empty folder to this release, and a second time does nothing", async () => {
    const { location, root } = emptyPlace();
    expect(await migrate(location, root)).toEqual(known);
    expect(await migrate(location, root)).toEqual([]);
    expect(query(location, 'SELECT migration_name FROM "_prisma_migrations" ORDER BY 1')).toEqual(
      known.map((migration_name) => ({ migration_name })),
    );
  });

  it("keeps the log ahead of writing, so that an acknowledged entry outlives a power cut", async () => {
    const { location, root } = emptyPlace();
    await migrate(location, root);
    expect(query(location, "PRAGMA journal_mode")).toEqual([{ journal_mode: "wal" }]);
  });

  it("is refused where a migration was changed after it was applied", async () => {
    const { location, root } = emptyPlace();
    await migrate(location, root);
    writeFileSync(path.join(root, "prisma/migrations/sqlite", known[0] as string, "migration.sql"), "-- other\n");
    await expect(migrate(location, root)).rejects.toThrow(/was changed after it was applied/);
  });

  it("is refused where a newer release has written", async () => {
    const { location, root } = emptyPlace();
    await migrate(location, root);
    run(
      location,
      `INSERT INTO "_prisma_migrations" (id, checksum, migration_name, finished_at) VALUES ('x', 'y', '29990101000000_later', 'z')`,
    );
    await expect(migrate(location, root)).rejects.toThrow(/newer release/);
  });

  it("is refused where a migration never finished", async () => {
    const { location, root } = emptyPlace();
    await migrate(location, root);
    run(location, `UPDATE "_prisma_migrations" SET finished_at = NULL`);
    await expect(migrate(location, root)).rejects.toThrow(/never finished/);
  });

  it("that would break a reference changes nothing at all", async () => {
    const { location, root } = emptyPlace();
    await migrate(location, root);
    const later = path.join(root, "prisma/migrations/sqlite/29990101000000_bad");
    mkdirSync(later);
    writeFileSync(
      path.join(later, "migration.sql"),
      `CREATE TABLE "Extra" (id TEXT); INSERT INTO "Variety" (id, name, "nameKey", "cropId") VALUES ('v', 'V', 'v', 'no such crop');`,
    );
    await expect(migrate(location, root)).rejects.toThrow(/broken references/);
    expect(query(location, `SELECT name FROM sqlite_master WHERE name = 'Extra'`)).toEqual([]);
    expect(query(location, 'SELECT id FROM "Variety"')).toEqual([]);
  });
});

import { cpSync, mkdirSync, readdirSync } from "node:fs";
import path from "node:path";
import Sqlite from "better-sqlite3";
import { type Location, migrate } from "@/lib/db";

const migrations = "prisma/migrations/sqlite";

/** The names of this release's migrations, the oldest first. */
export function migrationNames(): string[] {
  return readdirSync(migrations)
    .filter((name) => /^\d/.test(name))
    .sort();
}

/** A folder that looks like an older release: the first so many migrations alone. */
export function olderRelease(folder: string, howMany: number): string {
  for (const name of migrationNames().slice(0, howMany)) {
    const to = path.join(folder, migrations, name);
    mkdirSync(path.dirname(to), { recursive: true });
    cpSync(path.join(migrations, name), to, { recursive: true });
  }
  return folder;
}

/** A registry as the first release left it: one crop, one variety, one founder lot with two ledger entries, and its history. */
export async function olderRegistry(location: Location, release: string): Promise<void> {
  await migrate(location, release);
  const db = new Sqlite(location.url);
  const rows: [string, Record<string, string | number>][] = [
    ["Crop", { id: "c1", key: "own-oca", commonName: "Oca of ours", commonNameKey: "oca of ours", own: 1 }],
    ["Variety", { id: "v1", name: "Gable Pink", nameKey: "gable pink", cropId: "c1" }],
    ["Lot", { id: "l1", number: "Gable 1", numberKey: "gable 1", code: "ABCDEFGH2", varietyId: "v1", kind: "founder" }],
    [
      "LedgerEntry",
      {
        id: "e1",
        lotId: "l1",
        on: "2011-10",
        onFirst: "2011-10-01",
        onLast: "2011-10-31",
        kind: "received",
        amount: 40,
      },
    ],
    [
      "LedgerEntry",
      {
        id: "e2",
        lotId: "l1",
        on: "2012-05-02",
        onFirst: "2012-05-02",
        onLast: "2012-05-02",
        kind: "sown",
        amount: 15,
      },
    ],
  ];
  insert(db, "ChangeSet", {
    id: "s1",
    number: 1,
    at: "2012-05-02T10:00:00.000Z",
    kind: "entry",
    title: "Gable 1",
    actor: "the owner",
  });
  for (const [position, [table, row]] of rows.entries()) {
    insert(db, table, row);
    // SQLite gives flags as numbers; the registry notes them as it reads them.
    const after = JSON.stringify({ ...row, ...(table === "Crop" ? { own: true } : {}) });
    insert(db, "Change", {
      id: `h${position}`,
      changeSetId: "s1",
      position,
      tableName: table,
      recordId: String(row.id),
      action: "create",
      after,
    });
  }
  db.close();
}

function insert(db: Sqlite.Database, table: string, row: Record<string, string | number>): void {
  const columns = Object.keys(row);
  const names = columns.map((column) => `"${column}"`).join(", ");
  db.prepare(`INSERT INTO "${table}" (${names}) VALUES (${columns.map(() => "?").join(", ")})`).run(
    ...Object.values(row),
  );
}

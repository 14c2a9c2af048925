import { mkdirSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { makeBackup } from "@/lib/backups/make-backup";
import { restoreBackup } from "@/lib/backups/restore-backup";
import { openDatabase } from "@/lib/db";
import { backUpBeforeMigrating } from "@/lib/registry/safe-keeping/before-migrating";
import { verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import { locationOf } from "@/tests/faults/protocol";
import { migrationNames, olderRegistry, olderRelease } from "@/tests/setup/older-release";
import { granted, temporaryFolder } from "@/tests/setup/registry";

async function olderFolder(howMany: number): Promise<string> {
  const folder = temporaryFolder();
  mkdirSync(path.join(folder, "data"));
  await olderRegistry(locationOf(path.join(folder, "data")), olderRelease(path.join(folder, "release"), howMany));
  return path.join(folder, "data");
}

const now = new Date("2026-05-01T08:00:00Z");

describe("a backup of an older release", () => {
  it.each(
    migrationNames()
      .slice(0, -1)
      .map((name, place) => [name, place + 1] as const),
  )(
    "that knows no later step than %s is restored with its records, brought up to this release",
    async (_name, howMany) => {
      const folder = await olderFolder(howMany);
      const location = locationOf(folder);
      const { backup } = await makeBackup({ location, backups: path.join(folder, "backups"), now, why: "daily" });
      expect(backup.manifest.migrations.map((each) => each.name)).toEqual(migrationNames().slice(0, howMany));
      expect(backup.manifest.counts).toMatchObject({ Lot: 1, LedgerEntry: 2, Change: 5 });

      const to = path.join(temporaryFolder(), "restored");
      const restored = granted(await restoreBackup({ backup, to, now }));
      expect(restored.migrated).toEqual(migrationNames().slice(howMany));
      const db = await openDatabase(locationOf(to));
      try {
        const entries = await db.read.ledgerEntry.findMany({ orderBy: { id: "asc" } });
        expect(entries.map((entry) => [entry.kind, entry.amount])).toEqual([
          ["received", 40],
          ["sown", 15],
        ]);
        expect((await verifyRegistry(db, path.join(to, "photos"))).findings).toEqual([]);
      } finally {
        await db.close();
      }
    },
  );

  it("of a release that is newer is refused with what to do, and nothing is put in place", async () => {
    const folder = await olderFolder(migrationNames().length);
    const { backup } = await makeBackup({
      location: locationOf(folder),
      backups: path.join(folder, "backups"),
      now,
      why: "daily",
    });
    const to = path.join(temporaryFolder(), "restored");
    const older = olderRelease(path.join(temporaryFolder(), "older"), 1);
    const restored = await restoreBackup({ backup, to, now, root: older });
    expect(restored.ok).toBe(false);
    if (!restored.ok) expect(restored.refusals[0]?.sentence).toContain("was written by a newer release");
  });

  it("is made before a new release changes the tables, once, and not of a registry that is up to date", async () => {
    const folder = await olderFolder(1);
    const asked: string[] = [];
    const run = async (_location: unknown, why: string) => {
      asked.push(why);
      return { made: false as const, sentence: "The disk is full." };
    };
    const lines: string[] = [];
    await backUpBeforeMigrating(locationOf(folder), (line) => lines.push(line), run);
    expect([asked, lines]).toEqual([["before a new release"], ["No backup before the new release: The disk is full."]]);
    const current = await olderFolder(migrationNames().length);
    await backUpBeforeMigrating(locationOf(current), (line) => lines.push(line), run);
    await backUpBeforeMigrating(locationOf(path.join(folder, "none")), (line) => lines.push(line), run);
    expect(asked.length).toBe(1);
  });
});

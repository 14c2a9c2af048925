import { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { perform } from "@/lib/registry/change-set/perform";
import type { NewRowOf, TableName } from "@/lib/registry/change-set/records";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import { accepted } from "@/lib/science/outcome";
import { folderOf } from "@/tests/faults/protocol";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted, temporaryFolder } from "@/tests/setup/registry";

const owner = ownerHere();

async function entered<T extends TableName>(db: Database, table: T, ...rows: NewRowOf<T>[]): Promise<void> {
  const done = await perform(db, owner, { action: "record", title: `some of ${table}` }, async (change) => {
    await change.create(table, ...rows);
    return accepted(null);
  });
  granted(done);
}

const entry = (id: string, lotId: string, more: Partial<NewRowOf<"LedgerEntry">> = {}): NewRowOf<"LedgerEntry"> => ({
  id,
  lotId,
  on: "2021-03-01",
  onFirst: "2021-03-01",
  onLast: "2021-03-01",
  kind: "given",
  amount: 5,
  ...more,
});

onEveryEngine("verifying", (fresh) => {
  let db: Database;
  let photos: string;
  let lots: string[];
  let imported: string;

  beforeEach(async () => {
    db = await fresh();
    photos = path.join(temporaryFolder(), "photos");
    imported = granted(await importFolder(db, owner, folderOf("one", 3))).changeSetId as string;
    lots = (await db.read.lot.findMany({ orderBy: { number: "asc" } })).map((lot) => lot.id);
  });

  const found = async () => (await verifyRegistry(db, photos)).findings.map((each) => `${each.part}: ${each.sentence}`);

  it("finds nothing in what the registry's own operations wrote, undo among them", async () => {
    granted(await importFolder(db, owner, folderOf("two", 2)));
    granted(await undoChangeSet(db, owner, imported));
    const report = await verifyRegistry(db, photos);
    expect([report.findings, report.faults, report.notes]).toEqual([[], 0, 0]);
    expect(report.looked.map((each) => each.part)).toEqual([
      ...["file", "release", "references", "rules", "ledgers", "lineage", "photos", "history", "history"],
    ]);
  });

  it("looks and writes nothing", async () => {
    const before = await db.read.changeSet.count();
    await verifyRegistry(db, photos);
    expect(await db.read.changeSet.count()).toBe(before);
  });

  describe("the history", () => {
    it("tells a record that was changed beside it", async () => {
      await db.write.lot.update({ where: { id: lots[0] }, data: { notes: "by another hand" } });
      expect(await found()).toEqual([`history: Lot ${lots[0]}: notes is not as the last change left it.`]);
    });

    it("does not compare a text out of which it forgot an erased name", async () => {
      const noted = await db.read.change.findFirstOrThrow({ where: { recordId: lots[0] } });
      const after = { ...(JSON.parse(noted.after ?? "{}") as object), notes: "from (name erased)" };
      await db.write.change.update({ where: { id: noted.id }, data: { after: JSON.stringify(after) } });
      await db.write.lot.update({ where: { id: lots[0] }, data: { notes: "from Oda" } });
      expect(await found()).toEqual([]);
    });

    it("tells a record that is gone", async () => {
      await db.write.ledgerEntry.deleteMany({ where: { lotId: lots[0] } });
      expect(await found()).toEqual([expect.stringMatching(/^history: LedgerEntry .* not in its table\.$/)]);
    });

    it("tells a record that it does not know", async () => {
      await db.write.ledgerEntry.create({ data: entry("x1", lots[0] as string) as never });
      expect(await found()).toEqual(["history: 1 of LedgerEntry stand in their table, but not in the history."]);
    });

    it("tells a change set that lost a part", async () => {
      const last = await db.read.change.findFirstOrThrow({ where: { changeSetId: imported, position: 2 } });
      await db.write.change.delete({ where: { id: last.id } });
      const sentences = await found();
      expect(sentences[0]).toMatch(/^history: Change \d+ \("Brought in.*"\) lost a part of what it noted\.$/);
    });

    it("tells a note whose bytes changed, and a table that is none, and looks through the rest", async () => {
      await db.write.$executeRawUnsafe(
        `UPDATE "Change" SET "after" = '{"id":"x",}' WHERE "recordId" = '${lots[0]}' AND "tableName" = 'Lot'`,
      );
      expect(await found()).toEqual([`history: Lot ${lots[0]}: what its last change noted cannot be read any more.`]);
      await db.write.$executeRawUnsafe(`UPDATE "Change" SET "tableName" = 'Lop' WHERE "recordId" = '${lots[1]}'`);
      expect((await found())[0]).toContain("Something in changes in the history cannot be read as what it should be");
    });
  });

  describe("the ledgers", () => {
    it("note a jar out of which more was taken than was in", async () => {
      await entered(db, "LedgerEntry", entry("d1", lots[0] as string, { amount: 500 }));
      const report = await verifyRegistry(db, photos);
      expect([report.faults, report.notes]).toEqual([0, 1]);
      expect(report.findings[0]?.sentence).toContain("more was taken out than was in");
    });

    it("tell a correction in another lot", async () => {
      const [of] = await db.read.ledgerEntry.findMany({ where: { lotId: lots[0] } });
      await entered(db, "LedgerEntry", entry("d1", lots[1] as string, { replacesId: of?.id }));
      expect(await found()).toEqual([expect.stringContaining("a correction points to an entry of lot Lot one-0.")]);
    });

    it("tell a transfer whose sides do not agree", async () => {
      await entered(db, "Transfer", {
        id: "t1",
        kind: "gift",
        lotId: lots[0] as string,
        on: "2021-03-01",
        onFirst: "2021-03-01",
        onLast: "2021-03-01",
        amount: 5,
      });
      await entered(db, "LedgerEntry", entry("d1", lots[0] as string, { transferId: "t1" }));
      expect(await found()).toEqual([]);
      await entered(db, "LedgerEntry", entry("d2", lots[1] as string, { transferId: "t1", amount: 4 }));
      expect(await found()).toEqual([
        "ledgers: The gift of 2021-03-01 is booked in lot Lot one-1, which it does not name.",
        "ledgers: The gift of 2021-03-01 is booked as given more than once.",
      ]);
    });
  });

  it("tells a lot that is its own ancestor", async () => {
    const { varietyId } = await db.read.lot.findUniqueOrThrow({ where: { id: lots[0] } });
    const blend = (id: string): NewRowOf<"Lot"> => ({
      id,
      number: id,
      numberKey: id,
      code: id,
      varietyId,
      kind: "blend",
    });
    await entered(db, "Lot", blend("b1"), blend("b2"));
    await entered(
      db,
      "LotParent",
      { id: "p1", lotId: "b1", parentLotId: "b2", share: 1 },
      { id: "p2", lotId: "b2", parentLotId: "b1", share: 1 },
    );
    const sentences = await found();
    expect(sentences.length).toBeGreaterThan(0);
    expect(sentences.every((each) => each.startsWith("lineage: "))).toBe(true);
  });

  it("tells shares of a blend that do not come to one", async () => {
    const { varietyId } = await db.read.lot.findUniqueOrThrow({ where: { id: lots[0] } });
    await entered(db, "Lot", { id: "b1", number: "b1", numberKey: "b1", code: "b1", varietyId, kind: "blend" });
    await entered(
      db,
      "LotParent",
      { id: "p1", lotId: "b1", parentLotId: lots[0] as string, share: 0.5 },
      { id: "p2", lotId: "b1", parentLotId: lots[1] as string, share: 0.2 },
    );
    expect([...new Set((await found()).map((each) => each.split(":")[0]))]).toEqual(["lineage"]);
  });

  it("tells a photo without its file and one whose bytes changed, and notes a file without a photo", async () => {
    const bytes = new TextEncoder().encode("a pod");
    const hash = createHash("sha256").update(bytes).digest("hex");
    const { varietyId } = await db.read.lot.findUniqueOrThrow({ where: { id: lots[0] } });
    await entered(db, "Photo", { id: "f1", hash, varietyId, width: 9, height: 9, bytes: 5 });
    expect(await found()).toEqual([`photos: The photo ${hash} is on record, but its file is not there.`]);
    mkdirSync(path.join(photos, hash.slice(0, 2)), { recursive: true });
    const file = path.join(photos, hash.slice(0, 2), `${hash}.jpg`);
    writeFileSync(file, bytes);
    expect(await found()).toEqual([]);
    writeFileSync(file, "a bod");
    expect(await found()).toEqual([expect.stringContaining("its bytes changed")]);
    writeFileSync(file, bytes);
    writeFileSync(path.join(photos, "stray.jpg"), "x");
    const report = await verifyRegistry(db, photos);
    expect([report.faults, report.notes]).toEqual([0, 1]);
  });

  it("tells references and rules that the database was kept from holding", async () => {
    if (db.engine !== "sqlite") {
      // A PostgreSQL server refuses both itself, whoever writes.
      await expect(db.write.lot.update({ where: { id: lots[0] }, data: { varietyId: "none" } })).rejects.toThrow();
      await expect(db.write.lot.update({ where: { id: lots[0] }, data: { kind: "heap" } })).rejects.toThrow();
      return;
    }
    await db.write.$executeRawUnsafe("PRAGMA foreign_keys = OFF");
    await db.write.$executeRawUnsafe("PRAGMA ignore_check_constraints = ON");
    await db.write.$executeRawUnsafe(
      `UPDATE "LedgerEntry" SET "unit" = 'stone', "otherLotId" = 'none' WHERE "lotId" = '${lots[0]}'`,
    );
    const parts = (await found()).map((each) => each.split(":")[0]);
    // SQLite itself sees the broken rule when it looks through the file; then the rest is not looked at.
    expect(parts).toEqual(["file"]);
    await db.write.$executeRawUnsafe(`UPDATE "LedgerEntry" SET "unit" = 'g' WHERE "lotId" = '${lots[0]}'`);
    expect((await found())[0]).toMatch(
      /^references: 1 record of LedgerEntry name by otherLotId a Lot that is not there/,
    );
  });
});

import { uuidv7 } from "uuidv7";
import { describe, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { accepted, refusal, refused } from "@/lib/science/outcome";
import { emptyRegistry, granted } from "@/tests/setup/registry";

const owner = ownerHere();

async function withVariety(db: Database) {
  const id = uuidv7();
  const crop = await db.read.crop.findUniqueOrThrow({ where: { key: "pea" } });
  const done = await perform(db, owner, { action: "record", title: "Variety Hollow Pea" }, async (change) => {
    await change.create("Variety", { id, name: "Hollow Pea", nameKey: "hollow pea", cropId: crop.id });
    return accepted(id);
  });
  return { id, changeSetId: granted(done).changeSetId as string };
}

async function withLot(db: Database, varietyId: string) {
  const id = uuidv7();
  const done = await perform(db, owner, { action: "record", title: "Lot Quern 1" }, async (change) => {
    await change.create("Lot", {
      id,
      number: "Quern 1",
      numberKey: "quern 1",
      code: "23456789A",
      varietyId,
      kind: "founder",
    });
    change.touch(varietyId);
    return accepted(id);
  });
  return { id, changeSetId: granted(done).changeSetId as string };
}

describe("a change set", () => {
  it("holds who did what, and what each record was and is", async () => {
    const db = await emptyRegistry();
    const { id } = await withVariety(db);
    await perform(db, owner, { action: "correct", title: "Name corrected" }, async (change) => {
      await change.update("Variety", id, { name: "Hollow Pea, tall" });
      return accepted(null);
    });
    const set = await db.read.changeSet.findFirstOrThrow({
      where: { title: "Name corrected" },
      include: { changes: true },
    });
    expect(set.actor).toBe("the owner");
    expect(set.changes).toHaveLength(1);
    expect(JSON.parse(set.changes[0]?.before ?? "").name).toBe("Hollow Pea");
    expect(JSON.parse(set.changes[0]?.after ?? "").name).toBe("Hollow Pea, tall");
  });

  it("leaves nothing behind when the work is refused half way", async () => {
    const db = await emptyRegistry();
    const before = await db.read.changeSet.count();
    const crop = await db.read.crop.findUniqueOrThrow({ where: { key: "pea" } });
    const outcome = await perform(db, owner, { action: "record", title: "Half" }, async (change) => {
      await change.create("Variety", { id: uuidv7(), name: "Half", nameKey: "half", cropId: crop.id });
      return refused(refusal("no", ["name"], "Half", "is not wanted", "write another"));
    });
    expect(outcome.ok).toBe(false);
    expect(await db.read.variety.count()).toBe(0);
    expect(await db.read.changeSet.count()).toBe(before);
  });

  it("is refused to somebody who may only read", async () => {
    const db = await emptyRegistry();
    const outcome = await perform(db, { ...owner, role: "reader" }, { action: "record", title: "No" }, async () =>
      accepted(null),
    );
    expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("not-allowed");
  });

  it("marks only the variety that it touched, so that other figures stay cached", async () => {
    const db = await emptyRegistry();
    const { id } = await withVariety(db);
    const crop = await db.read.crop.findUniqueOrThrow({ where: { key: "oat" } });
    const other = uuidv7();
    await perform(db, owner, { action: "record", title: "Another" }, async (change) => {
      await change.create("Variety", { id: other, name: "Mere Oat", nameKey: "mere oat", cropId: crop.id });
      change.touch(other);
      return accepted(null);
    });
    const before = (await db.read.variety.findUniqueOrThrow({ where: { id: other } })).revision;
    await withLot(db, id);
    expect((await db.read.variety.findUniqueOrThrow({ where: { id: other } })).revision).toBe(before);
    expect((await db.read.variety.findUniqueOrThrow({ where: { id } })).revision).toBe(before + 1);
  });
});

describe("undo", () => {
  it("removes what was made, in a change set of its own", async () => {
    const db = await emptyRegistry();
    const { changeSetId } = await withVariety(db);
    granted(await undoChangeSet(db, owner, changeSetId));
    expect(await db.read.variety.count()).toBe(0);
    const undo = await db.read.changeSet.findFirstOrThrow({
      where: { undoesId: changeSetId },
      include: { changes: true },
    });
    expect(JSON.parse(undo.changes[0]?.before ?? "").name).toBe("Hollow Pea");
  });

  it("is itself undone by taking it back: the record stands again under its id", async () => {
    const db = await emptyRegistry();
    const { id, changeSetId } = await withVariety(db);
    const undone = granted(await undoChangeSet(db, owner, changeSetId));
    granted(await undoChangeSet(db, owner, undone.changeSetId as string));
    expect((await db.read.variety.findUniqueOrThrow({ where: { id } })).name).toBe("Hollow Pea");
  });

  it("is refused with the name of what depends on it", async () => {
    const db = await emptyRegistry();
    const { id, changeSetId } = await withVariety(db);
    await withLot(db, id);
    const outcome = await undoChangeSet(db, owner, changeSetId);
    expect(outcome.ok ? "" : outcome.refusals[0]?.sentence).toBe(
      '"lot Quern 1" depends on variety Hollow Pea; take that back first',
    );
    expect(await db.read.variety.count()).toBe(1);
  });

  it("is refused where a later change stands on the same record", async () => {
    const db = await emptyRegistry();
    const { id, changeSetId } = await withVariety(db);
    await perform(db, owner, { action: "correct", title: "Later" }, async (change) => {
      await change.update("Variety", id, { note: "climbs" });
      return accepted(null);
    });
    await perform(db, owner, { action: "correct", title: "Later still" }, async (change) => {
      await change.update("Variety", id, { name: "Other" });
      return accepted(null);
    });
    const outcome = await undoChangeSet(db, owner, changeSetId);
    expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("changed-since");
  });

  it("is refused a second time", async () => {
    const db = await emptyRegistry();
    const { changeSetId } = await withVariety(db);
    granted(await undoChangeSet(db, owner, changeSetId));
    const again = await undoChangeSet(db, owner, changeSetId);
    expect(again.ok ? "" : again.refusals[0]?.code).toBe("undone-already");
  });
});

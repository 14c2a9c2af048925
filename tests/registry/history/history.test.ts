import { describe, expect, it } from "vitest";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { listChangeSets } from "@/lib/registry/history/list-change-sets";
import { readChangeSet } from "@/lib/registry/history/read-change-set";
import { recordAsOf } from "@/lib/registry/history/record-as-of";
import { recordHistory } from "@/lib/registry/history/record-history";
import { correctVariety } from "@/lib/registry/varieties/correct-variety";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner, withLot, withVariety } from "../varieties/with-variety";

async function corrected() {
  const db = await emptyRegistry();
  const id = await withVariety(db, "Hollow Pea", "pea", { story: "From the mill." });
  const typed = { story: "From the weir.", note: "climbs", reason: "the teller said so" };
  const { changeSetId } = granted(await correctVariety(db, owner, id, typed));
  return { db, id, changeSetId: changeSetId as string };
}

describe("the history", () => {
  it("gives the change sets newest first, with what each made and changed", async () => {
    const { db } = await corrected();
    const { sets, total } = await listChangeSets(db);
    expect(sets.slice(0, 2).map((set) => set.title)).toEqual(["Hollow Pea corrected", "Variety Hollow Pea"]);
    expect(sets[0]?.counts).toEqual([{ noun: "variety", action: "update", count: 1 }]);
    expect(total).toBe(await db.read.changeSet.count());
  });

  it("finds by words of title, reason and actor, in any letter case", async () => {
    const { db } = await corrected();
    expect((await listChangeSets(db, { words: "TELLER" })).total).toBe(1);
    expect((await listChangeSets(db, { words: "owner" })).total).toBe(2);
    expect((await listChangeSets(db, { words: "nobody" })).total).toBe(0);
  });

  it("filters by kind and by days, both included", async () => {
    const { db } = await corrected();
    const [newest] = (await listChangeSets(db)).sets;
    const day = newest?.day ?? "";
    expect((await listChangeSets(db, { kind: "entry", from: day, to: day })).total).toBe(2);
    expect((await listChangeSets(db, { kind: "undo" })).total).toBe(0);
    expect((await listChangeSets(db, { to: "2000-01-01" })).total).toBe(0);
  });

  it("says of a change set and its undo that they belong together", async () => {
    const { db, changeSetId } = await corrected();
    granted(await undoChangeSet(db, owner, changeSetId));
    const [undo, done] = (await listChangeSets(db)).sets;
    expect(undo).toMatchObject({ kind: "undo", undoes: done?.number });
    expect(done).toMatchObject({ undoneBy: undo?.number });
  });
});

describe("one change set", () => {
  it("shows each field from what to what, and nothing that only follows from others", async () => {
    const { db, changeSetId } = await corrected();
    const read = await readChangeSet(db, changeSetId);
    expect(read).toMatchObject({ reason: "the teller said so", actor: "the owner", total: 1 });
    expect(read?.changes[0]).toMatchObject({ noun: "variety", name: "Hollow Pea", action: "update" });
    expect(read?.changes[0]?.fields).toEqual([
      { field: "story", from: "From the mill.", to: "From the weir." },
      { field: "note", from: null, to: "climbs" },
    ]);
  });

  it("is found by its number too, and names the records that fields point to", async () => {
    const { db } = await corrected();
    const made = (await listChangeSets(db, { words: "Variety Hollow" })).sets[0];
    const read = await readChangeSet(db, String(made?.number));
    const crop = read?.changes[0]?.fields.find((each) => each.field === "cropId");
    expect(read?.names.get(String(crop?.to))).toBe("Pea");
    expect(read?.changes[0]?.fields.map((each) => each.field)).not.toContain("nameKey");
  });

  it("is null where there is none", async () => {
    const db = await emptyRegistry();
    expect(await readChangeSet(db, "none")).toBeNull();
    expect(await readChangeSet(db, "9999")).toBeNull();
  });
});

describe("the history of a record", () => {
  it("gives who did what to it, newest first, and leaves out other records", async () => {
    const { db, id } = await corrected();
    const lotId = await withLot(db, id);
    const { entries } = await recordHistory(db, [id]);
    expect(entries.map((entry) => entry.title)).toEqual(["Hollow Pea corrected", "Variety Hollow Pea"]);
    const both = await recordHistory(db, [id, lotId]);
    expect(both.entries[0]?.changes[0]?.noun).toBe("lot");
    expect(both.names.get(id)).toBe("Hollow Pea");
  });
});

describe("a record as of a day", () => {
  const at = async (patch: Record<number, string>) => {
    const { db, id, changeSetId } = await corrected();
    const sets = await db.read.changeSet.findMany({ where: { kind: "entry" }, orderBy: { number: "asc" } });
    for (const [index, instant] of Object.entries(patch)) {
      await db.write.changeSet.update({ where: { id: sets[Number(index)]?.id }, data: { at: instant } });
    }
    return { db, id, changeSetId };
  };

  it("is what was written by the end of that day", async () => {
    const { db, id } = await at({ 0: "2019-05-01T10:00:00.000Z", 1: "2021-05-01T10:00:00.000Z" });
    const story = async (day: string) => (await recordAsOf(db, id, day))?.fields.find((each) => each.field === "story");
    expect(await story("2019-12-31")).toEqual({ field: "story", value: "From the mill." });
    expect(await story("2021-05-01")).toEqual({ field: "story", value: "From the weir." });
  });

  it("is not there before it was written down, nor after it was removed", async () => {
    const { db, id } = await at({ 0: "2019-05-01T10:00:00.000Z", 1: "2019-06-01T10:00:00.000Z" });
    expect((await recordAsOf(db, id, "2019-04-30"))?.state).toBe("not yet");
    for (const { id: set } of await db.read.changeSet.findMany({
      where: { kind: "entry" },
      orderBy: { number: "desc" },
    })) {
      granted(await undoChangeSet(db, owner, set));
    }
    expect((await recordAsOf(db, id, "2999-01-01"))?.state).toBe("removed");
    expect(await recordAsOf(db, "never", "2999-01-01")).toBeNull();
  });

  it("goes by the writer's own day", async () => {
    const { db, id } = await at({ 0: "2019-05-01T23:30:00.000Z" });
    await db.write.changeSet.updateMany({ where: { at: "2019-05-01T23:30:00.000Z" }, data: { atOffset: 60 } });
    expect((await recordAsOf(db, id, "2019-05-01"))?.state).toBe("not yet");
    expect((await recordAsOf(db, id, "2019-05-02"))?.state).toBe("stood");
  });
});

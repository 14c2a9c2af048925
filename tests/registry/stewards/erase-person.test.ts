import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { perform } from "@/lib/registry/change-set/perform";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { correctSteward } from "@/lib/registry/stewards/correct-steward";
import { erasePerson } from "@/lib/registry/stewards/erase-person";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { erasedMark, forgetting } from "@/lib/registry/stewards/without-name";
import { accepted } from "@/lib/science/outcome";
import { onEveryEngine } from "../../setup/engines";
import { emptyRegistry, granted } from "../../setup/registry";
import { aCircle, actor, secrets } from "../privacy/a-circle";

const owner = ownerHere();

onEveryEngine("Erasing a person", (fresh) => {
  test("takes name, contact and address out of the records and the history; the steward and the seed stay", async () => {
    const db = await fresh();
    const { stewards, lots } = await aCircle(db);
    granted(await correctSteward(db, owner, stewards.anna, { name: "Anna Vell-Harrow", place: "Upper valley" }));
    granted(
      await perform(db, owner, { action: "record", title: "Given to Anna Vell-Harrow" }, async (change, tx) => {
        await change.update("Transfer", (await tx.transfer.findFirstOrThrow()).id, {
          note: "asked ANNA VELL-HARROW",
        });
        return accepted(null);
      }),
    );
    const { changeSetId } = granted(await erasePerson(db, owner, stewards.anna));
    const stays = (await listStewards(db)).find((each) => each.id === stewards.anna);
    expect(stays).toMatchObject({ name: null, place: "Upper valley", lots: 2 });
    expect((await db.read.lot.findUniqueOrThrow({ where: { id: lots.annas } })).holderId).toBe(stewards.anna);
    const kept = JSON.stringify([
      await db.read.change.findMany(),
      await db.read.changeSet.findMany(),
      await db.read.person.findMany(),
      await db.read.transfer.findMany(),
      await db.read.ledgerEntry.findMany(),
    ]);
    for (const word of [
      "Anna Vell",
      "anna vell",
      "Anna Vell-Harrow",
      "ANNA VELL-HARROW",
      "anna vell-harrow",
      secrets.address,
    ])
      expect(kept.includes(word), word).toBe(false);
    // The borrower's contact begins with the same letters, and is another word.
    expect(kept.includes(`"${secrets.contact}"`)).toBe(false);
    expect(kept.includes(`${secrets.contact}-b`)).toBe(true);
    expect(kept).toContain(`Given to ${erasedMark}`);
    const undone = await undoChangeSet(db, owner, changeSetId ?? "");
    expect(undone.ok ? "" : undone.refusals[0]?.code).toBe("not-undone");
  });

  test("is refused where somebody still has to be asked, or comes in with an account, and to all but the owner", async () => {
    const db = await fresh();
    const { stewards } = await aCircle(db);
    const codes = async (who: typeof owner, stewardId: string) => {
      const outcome = await erasePerson(db, who, stewardId);
      return outcome.ok ? [] : outcome.refusals.map((each) => each.code);
    };
    expect(await codes(owner, stewards.borrower)).toEqual(["answer-open"]);
    expect(await codes(actor("librarian"), stewards.anna)).toEqual(["not-allowed"]);
    expect(await codes(owner, "nobody")).toEqual(["unknown-steward"]);
    await db.write.user.create({ data: { id: "u1", name: "Berto", email: "u1@kinrow.invalid", username: "berto" } });
    await db.write.member.create({
      data: { id: "m1", userId: "u1", role: "steward", stewardId: stewards.bert, addedAt: "2026-01-01T00:00:00.000Z" },
    });
    expect(await codes(owner, stewards.bert)).toEqual(["has-account"]);
    expect((await db.read.person.findUniqueOrThrow({ where: { stewardId: stewards.bert } })).name).toBe("Bert Omm");
    const berto = { ...actor("steward", stewards.bert), name: "Berto" };
    granted(
      await perform(db, berto, { action: "record", title: "A name" }, async (change) => {
        await change.update("Steward", stewards.bert, { note: "of the lower row" });
        return accepted(null);
      }),
    );
    await db.write.member.update({ where: { id: "m1" }, data: { endedAt: "2026-02-01T00:00:00.000Z" } });
    expect(await codes(owner, stewards.bert)).toEqual([]);
    expect([await db.read.user.count(), await db.read.member.count({ where: { userId: null } })]).toEqual([0, 1]);
    expect((await db.read.changeSet.findMany()).map((each) => each.actor)).not.toContain("Berto");
  });
});

test("a name is forgotten as a word of its own, in any letter case, and within JSON as it is written there", () => {
  const without = forgetting(["Al Ro", "al@post"]);
  expect(without("for Al Ro, and AL RO's friend")).toBe(`for ${erasedMark}, and ${erasedMark}'s friend`);
  expect(without("Val Rose")).toBeNull();
  expect(without("al@post")).toBe(erasedMark);
  expect(forgetting(['Jo "Red" Hill'], true)(JSON.stringify({ name: 'Jo "Red" Hill' }))).toBe(
    JSON.stringify({ name: erasedMark }),
  );
  expect(forgetting([])("anything")).toBeNull();
});

test("a name is forgotten at the beginning of a line too, and is never taken for the name of a field", () => {
  const told = { note: "asked\nJo Hill\tand\r\nJo Hill", extra: JSON.stringify({ told: "by\nJo Hill" }) };
  const without = `asked\n${erasedMark}\tand\r\n${erasedMark}`;
  expect(JSON.parse(forgetting(["Jo Hill"], true)(JSON.stringify(told)) ?? "")).toEqual({
    note: without,
    extra: JSON.stringify({ told: `by\n${erasedMark}` }),
  });
  expect(forgetting(["Note"], true)(JSON.stringify({ note: "of Note", kind: "given" }))).toBe(
    JSON.stringify({ note: `of ${erasedMark}`, kind: "given" }),
  );
  expect(forgetting(["Note"], true)(JSON.stringify({ note: "another" }))).toBeNull();
});

test("What was erased is gone from the bytes of the file, too", async () => {
  const db = await emptyRegistry();
  const { stewards } = await aCircle(db);
  const bytes = async () => {
    await db.write.$queryRawUnsafe("PRAGMA wal_checkpoint(TRUNCATE)");
    return readFileSync(db.location.url).toString("latin1");
  };
  expect(await bytes()).toContain(secrets.address);
  granted(await erasePerson(db, owner, stewards.anna));
  const left = await bytes();
  expect([secrets.address, "Anna Vell"].filter((word) => left.includes(word))).toEqual([]);
});

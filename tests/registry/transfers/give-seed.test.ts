import { beforeEach, expect, test } from "vitest";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { correctLedgerEntry } from "@/lib/registry/ledger/correct-ledger-entry";
import { parseDate } from "@/lib/science/dates/parse-date";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, anEntry } from "../lots/lots-in-tests";
import { aJarOfBeans, faultsOf, give, gramsIn, owner, today } from "./transfers-in-tests";

onEveryEngine("seed given", (fresh) => {
  let db: Database;
  let beans: Awaited<ReturnType<typeof aJarOfBeans>>;

  beforeEach(async () => {
    db = await fresh();
    beans = await aJarOfBeans(db);
  });

  test("to a steward is a lot of its own there, with one linked entry on each side", async () => {
    const told = ["local-rule", "no-promise", "caution-crop"];
    const { value } = granted(
      await give(db, beans.lotId, { number: "Ham 3 r", purpose: "to grow", told, toldWords: "sow it early" }),
    );
    const made = await db.read.lot.findUniqueOrThrow({
      where: { id: value.newLotId ?? "" },
      include: { parents: true },
    });
    expect(made).toMatchObject({ kind: "split", number: "Ham 3 r", holderId: beans.rin, thousandSeedGrams: 500 });
    expect(made.parents.map((each) => each.parentLotId)).toEqual([beans.lotId]);
    expect(await gramsIn(db, beans.lotId)).toBe(200);
    expect(await gramsIn(db, made.id)).toBe(20);
    const entries = await db.read.ledgerEntry.findMany({
      where: { transferId: value.transferId },
      orderBy: { id: "asc" },
    });
    expect(entries.map((each) => [each.lotId, each.kind, each.amount, each.unit, each.otherLotId])).toEqual([
      [beans.lotId, "given", 20, "g", made.id],
      [made.id, "received", 20, "g", beans.lotId],
    ]);
    const transfer = await db.read.transfer.findUniqueOrThrow({ where: { id: value.transferId } });
    expect(transfer).toMatchObject({
      ...{ kind: "gift", lotId: beans.lotId, newLotId: made.id, fromStewardId: beans.oda, toStewardId: beans.rin },
      ...{ amount: 20, unit: "g", purpose: "to grow", note: null },
      told:
        "Care with Broad bean, faba. The crop list says: favism in sensitive people. Keep it labelled and out of " +
        "children’s reach; your local rules stand above this.\n" +
        "No promise goes with it, of what comes up or of what it grows into.\n" +
        "Check your local rule on passing seed on and on growing it.\nsow it early",
    });
  });

  test("to somebody outside is one entry, in words, and a mistaken record can be taken back", async () => {
    const done = granted(
      await give(db, beans.lotId, { toWords: "a reader at the swap table", amount: "30", unit: "seeds" }),
    );
    expect(done.value).toMatchObject({ newLotId: null });
    // 30 seeds at 500 g a thousand are 15 g
    expect(await gramsIn(db, beans.lotId)).toBe(205);
    const entries = await db.read.ledgerEntry.findMany({ where: { transferId: done.value.transferId } });
    expect(entries.map((each) => [each.kind, each.amount, each.unit, each.other])).toEqual([
      ["given", 30, "seeds", "a reader at the swap table"],
    ]);
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect(await db.read.transfer.count()).toBe(0);
    expect(await gramsIn(db, beans.lotId)).toBe(220);
  });

  test("to a new name makes a steward with the person apart; the record undone leaves neither", async () => {
    const done = granted(await give(db, beans.lotId, { newHolder: "Perrin Vale" }));
    const person = await db.read.person.findFirstOrThrow({ where: { name: "Perrin Vale" } });
    const transfer = await db.read.transfer.findFirstOrThrow();
    expect([transfer.toStewardId, transfer.toWords]).toEqual([person.stewardId, null]);
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect([await db.read.lot.count(), await db.read.steward.count(), await db.read.transfer.count()]).toEqual([
      1, 2, 0,
    ]);
  });

  test("on loan says what was promised and when to ask, and is refused without", async () => {
    expect(faultsOf(await give(db, beans.lotId, { kind: "loan" }))).toEqual([
      "missing at replyDue",
      "missing at promise",
    ]);
    expect(
      faultsOf(await give(db, beans.lotId, { kind: "loan", toWords: "a reader", promise: "p", replyDue: "2028" })),
    ).toEqual(["loan-to-nobody at holder"]);
    expect(
      faultsOf(await give(db, beans.lotId, { kind: "loan", promise: "brings some back", replyDue: "2025" })),
    ).toEqual(["due-before at replyDue"]);
    const lent = granted(
      await give(db, beans.lotId, { kind: "loan", promise: "brings 20 g back", replyDue: "2028-10" }),
    );
    const promise = await db.read.promise.findFirstOrThrow();
    expect(promise).toMatchObject({
      ...{ transferId: lent.value.transferId, lotId: beans.lotId, stewardId: beans.rin, varietyId: beans.varietyId },
      ...{ words: "brings 20 g back", due: "2028-10", keptOn: null },
    });
  });

  test("back to where it came from stands in quarantine there, and the reserve does not hold it back", async () => {
    const { value } = granted(await give(db, beans.lotId, { kind: "loan", promise: "p", replyDue: "2027" }));
    const back = granted(
      await give(db, value.newLotId ?? "", { kind: "return", holder: "Oda Fenlight", amount: "15" }),
    );
    const lot = await db.read.lot.findUniqueOrThrow({ where: { id: back.value.newLotId ?? "" } });
    expect([lot.status, lot.statusReason, lot.holderId]).toEqual([
      "quarantine",
      "came back on 2026-11-01; not compared yet",
      beans.oda,
    ]);
  });

  test("as a safety duplicate stands in a place elsewhere", async () => {
    const { value } = granted(
      await give(db, beans.lotId, { kind: "safety duplicate", place: "Rin's loft", building: "the old dairy" }),
    );
    const container = await db.read.container.findFirstOrThrow({ include: { place: true } });
    expect(container).toMatchObject({ lotId: value.newLotId, amount: 20, unit: "g" });
    expect(container.place).toMatchObject({ name: "Rin's loft", building: "the old dairy", stewardId: beans.rin });
  });

  test("in the holder's own other building stays in the lot: a container, and no entry", async () => {
    expect(faultsOf(await give(db, beans.lotId, { holder: "Oda Fenlight" }))).toEqual(["own-hand at holder"]);
    const own = { holder: "Oda Fenlight", kind: "safety duplicate" };
    expect(faultsOf(await give(db, beans.lotId, own))).toEqual(["missing at building"]);
    const done = granted(await give(db, beans.lotId, { ...own, building: "the old dairy", amount: "200" }));
    expect(done.value.newLotId).toBeNull();
    expect(await gramsIn(db, beans.lotId)).toBe(220);
    expect(await db.read.ledgerEntry.count({ where: { transferId: done.value.transferId } })).toBe(0);
    expect(faultsOf(await give(db, beans.lotId, { ...own, building: "The Old Dairy" }))).toEqual([
      "same-building at building",
    ]);
    expect(faultsOf(await give(db, beans.lotId, { ...own, building: "mill", amount: "221" }))).toEqual([
      "more-than-there-is at amount",
    ]);
  });

  test("to a library needs a library, never treated seed; a new name becomes one", async () => {
    const typed = { kind: "to a library" };
    expect(faultsOf(await give(db, beans.lotId, typed))).toEqual(["no-library at holder"]);
    granted(await give(db, beans.lotId, { ...typed, newHolder: "Seed shelf of Low Harrow" }));
    expect(await db.read.steward.count({ where: { kind: "library" } })).toBe(1);
    await db.write.lot.update({
      where: { id: beans.lotId },
      data: { treatment: "chemical", treatmentSubstance: "thiram" },
    });
    const reason = { override: "they asked", told: ["caution-treated", "caution-crop"] };
    expect(faultsOf(await give(db, beans.lotId, { holder: "Seed shelf of Low Harrow", ...reason }))).toEqual([
      "treated at kind",
    ]);
    // to a steward only with a reason, and only if it is said
    expect(faultsOf(await give(db, beans.lotId))).toEqual(["not-told at told", "treated at override"]);
    expect(faultsOf(await give(db, beans.lotId, { told: [], override: "they asked" }))).toEqual([
      "not-told at told",
      "not-told at told",
    ]);
    const { value } = granted(await give(db, beans.lotId, reason));
    const transfer = await db.read.transfer.findUniqueOrThrow({ where: { id: value.transferId } });
    expect(transfer.note).toBe("Given although lot Ham 3 is treated seed (thiram). Reason: they asked");
    expect(transfer.told).toContain("Treated seed: thiram.");
  });

  test("beyond what is free asks for a reason, says where two rules collide, and keeps what was said", async () => {
    expect(faultsOf(await give(db, beans.lotId, { amount: "111" }))).toEqual([]);
    const second = await give(db, beans.lotId, { amount: "40" });
    // 109 g, 218 seeds, are left, which is the reserve, and no second place was confirmed when the reserve was told
    expect(faultsOf(second)).toEqual(["reserve-not-met at override"]);
    const outcome = granted(
      await give(db, beans.lotId, { amount: "40", override: "a fire is likelier than a bad spring" }),
    );
    const set = await db.read.changeSet.findUniqueOrThrow({ where: { id: outcome.changeSetId ?? "" } });
    expect(set.reason).toBe("a fire is likelier than a bad spring");
    const transfer = await db.read.transfer.findUniqueOrThrow({ where: { id: outcome.value.transferId } });
    expect(transfer.note).toContain("the reserve of 218 seeds is not met");
  });

  test("the last seed never goes silently, and more than there is not at all", async () => {
    const all = await give(db, beans.lotId, { amount: "220" });
    expect(faultsOf(all)).toEqual(["above-what-is-free at override", "last-seed at override"]);
    expect(all.ok ? "" : all.refusals[1]?.sentence).toContain("no other lot of Hamble Long on record may hold seed");
    expect(faultsOf(await give(db, beans.lotId, { amount: "230", override: "all of it" }))).toEqual([
      "balance-below-zero at amount",
    ]);
    granted(await give(db, beans.lotId, { amount: "220", override: "I stop keeping it" }));
    expect(await gramsIn(db, beans.lotId)).toBe(0);
  });

  test("refuses nobody, two of them, an unknown name, a day to come, and a lot that is gone", async () => {
    expect(faultsOf(await give(db, beans.lotId, { holder: "" }))).toEqual(["missing at holder"]);
    expect(faultsOf(await give(db, beans.lotId, { holder: "Rin Olderwick", toWords: "a reader" }))).toEqual([
      "two-recipients at toWords",
    ]);
    expect(faultsOf(await give(db, beans.lotId, { holder: "Rin Oldwick" }))).toEqual(["unknown-steward at holder"]);
    expect(faultsOf(await give(db, beans.lotId, { on: "2027" }))).toEqual(["in-the-future at on"]);
    await db.write.lot.update({ where: { id: beans.lotId }, data: { status: "discarded" } });
    expect(faultsOf(await give(db, beans.lotId, { override: "all the same" }))).toEqual(["discarded at kind"]);
    expect(faultsOf(await give(db, "no-such-lot"))).toEqual(["unknown at lot"]);
    expect(await db.read.transfer.count()).toBe(0);
  });

  test("a side of it is not corrected alone", async () => {
    const { value } = granted(await give(db, beans.lotId));
    const entry = await db.read.ledgerEntry.findFirstOrThrow({ where: { transferId: value.transferId } });
    const on = granted(parseDate("2026-11-01"));
    const input = {
      kind: "given" as const,
      amount: 5,
      unit: "g" as const,
      on,
      other: null,
      notes: null,
      reason: "slip",
    };
    expect(faultsOf(await correctLedgerEntry(db, owner, entry.id, input, today))).toEqual([
      "side-of-transfer at entry",
    ]);
  });

  test("another lot of the holder is named no more as the last of all", async () => {
    const other = await aLot(db, beans.varietyId, { number: "Ham 4", holderId: beans.rin });
    await anEntry(db, other, "received", 30, "2025-01-01");
    const all = await give(db, beans.lotId, { amount: "220" });
    expect(all.ok ? "" : all.refusals.at(-1)?.sentence).toContain("this holder has no other of Hamble Long");
  });
});

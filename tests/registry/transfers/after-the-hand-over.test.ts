import { beforeEach, expect, test } from "vitest";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { recordLedgerEntry } from "@/lib/registry/ledger/record-ledger-entry";
import { correctTransfer } from "@/lib/registry/transfers/correct-transfer";
import { keepPromise, letPromiseGo } from "@/lib/registry/transfers/promises";
import { recordReply } from "@/lib/registry/transfers/record-reply";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { correctTransferSchema, replySchema } from "@/lib/schemas/transfers/transfer";
import { parseDate } from "@/lib/science/dates/parse-date";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aJarOfBeans, faultsOf, give, gramsIn, owner, today } from "./transfers-in-tests";

onEveryEngine("after seed was handed over", (fresh) => {
  let db: Database;
  let beans: Awaited<ReturnType<typeof aJarOfBeans>>;
  let transferId: string;
  let newLotId: string;

  beforeEach(async () => {
    db = await fresh();
    beans = await aJarOfBeans(db);
    const lent = granted(await give(db, beans.lotId, { kind: "loan", promise: "will grow 30", replyDue: "2026-12~" }));
    transferId = lent.value.transferId;
    newLotId = lent.value.newLotId ?? "";
  });

  const correct = async (typed: Readonly<Record<string, string>> = {}, id = transferId) => {
    const start = { on: "2026-11-01", amount: "20", unit: "g", reason: "misread the scales" };
    const input = granted(parseForm(correctTransferSchema("north"), { ...start, ...typed }));
    return correctTransfer(db, owner, id, input, today);
  };

  test("a correction changes both ledgers, and the old entries stay to be read", async () => {
    const done = granted(await correct({ amount: "12", on: "2026-10-30", told: "that it crosses", note: "by post" }));
    expect([await gramsIn(db, beans.lotId), await gramsIn(db, newLotId)]).toEqual([208, 12]);
    expect(await db.read.ledgerEntry.count({ where: { transferId } })).toBe(4);
    expect(await db.read.transfer.findUniqueOrThrow({ where: { id: transferId } })).toMatchObject({
      ...{
        amount: 12,
        on: "2026-10-30",
        onFirst: "2026-10-30",
        told: "that it crosses",
        note: "by post",
        replyDue: null,
      },
    });
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect([await gramsIn(db, beans.lotId), await gramsIn(db, newLotId)]).toEqual([200, 20]);
  });

  test("a correction of the words alone leaves the ledgers as they are", async () => {
    granted(await correct({ purpose: "to grow" }));
    expect(await db.read.ledgerEntry.count({ where: { transferId } })).toBe(2);
  });

  test("a correction is refused where one side does not hold it, without an amount, for a day to come and for no transfer", async () => {
    const on = granted(parseDate("2026-11-10"));
    const sown = { kind: "sown" as const, amount: 15, unit: "g" as const, on, other: null, notes: null };
    granted(await recordLedgerEntry(db, owner, newLotId, sown, today));
    expect(faultsOf(await correct({ amount: "12" }))).toEqual(["balance-below-zero at amount"]);
    expect(faultsOf(await correct({ amount: "400" }))).toEqual(["balance-below-zero at amount"]);
    expect(faultsOf(await correct({ amount: "" }))).toEqual(["missing at amount"]);
    expect(faultsOf(await correct({ on: "2027" }))).toEqual(["in-the-future at on"]);
    expect(faultsOf(await correct({}, "no-such"))).toEqual(["unknown at transfer"]);
    expect([await gramsIn(db, beans.lotId), await gramsIn(db, newLotId)]).toEqual([200, 5]);
  });

  test("a promise is kept once, not before its day", async () => {
    const { id } = await db.read.promise.findFirstOrThrow();
    const day = granted(parseDate("2026-11-20"));
    expect(faultsOf(await keepPromise(db, owner, id, granted(parseDate("2027")), today))).toEqual([
      "in-the-future at on",
    ]);
    granted(await keepPromise(db, owner, id, day, today));
    expect((await db.read.promise.findFirstOrThrow()).keptOn).toBe("2026-11-20");
    expect(faultsOf(await keepPromise(db, owner, id, day, today))).toEqual(["kept-already at promise"]);
    expect(faultsOf(await letPromiseGo(db, owner, id, "moved away", today))).toEqual(["kept-already at promise"]);
    expect(faultsOf(await keepPromise(db, owner, "no-such", day, today))).toEqual(["unknown at promise"]);
  });

  test("a loan whose promise is let go becomes a gift, and its words are kept", async () => {
    const { id } = await db.read.promise.findFirstOrThrow();
    const done = granted(await letPromiseGo(db, owner, id, "the garden was sold", today));
    const words = "The promise “will grow 30”, due 2026-12~, is let go: the garden was sold";
    expect(await db.read.promise.count()).toBe(0);
    expect(await db.read.transfer.findUniqueOrThrow({ where: { id: transferId } })).toMatchObject({
      ...{ kind: "gift", replyDue: null, note: `2026-11-24: ${words}` },
    });
    expect(await db.read.observation.findFirstOrThrow()).toMatchObject({ words, lotId: beans.lotId, on: "2026-11-24" });
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect(await db.read.promise.findFirstOrThrow()).toMatchObject({ words: "will grow 30", transferId });
  });

  const reply = (typed: Readonly<Record<string, string>>, id = transferId) =>
    recordReply(db, owner, id, granted(parseForm(replySchema("north"), { words: "all up", ...typed })), today);

  test("an answer is kept with the transfer and is a holder's word", async () => {
    granted(await reply({ on: "2026-11-20", still: "yes" }));
    expect(await db.read.transfer.findUniqueOrThrow({ where: { id: transferId } })).toMatchObject({
      ...{ replyDue: null, note: "2026-11-20, their answer: all up" },
    });
    expect(await db.read.holderConfirmation.findFirstOrThrow()).toMatchObject({
      ...{
        varietyId: beans.varietyId,
        stewardId: beans.rin,
        lotId: newLotId,
        still: "yes",
        on: "2026-11-20",
        note: "all up",
      },
    });
  });

  test("an answer is refused before the hand-over, in the future, of no transfer, and as a holder's word of nobody here", async () => {
    expect(faultsOf(await reply({ on: "2026-10-31" }))).toEqual(["before-transfer at on"]);
    expect(faultsOf(await reply({ on: "2026-11-25" }))).toEqual(["in-the-future at on"]);
    expect(faultsOf(await reply({ on: "2026-11-20" }, "no-such"))).toEqual(["unknown at transfer"]);
    const outside = granted(await give(db, beans.lotId, { toWords: "a reader", replyDue: "2027" }));
    expect(faultsOf(await reply({ on: "2026-11-20", still: "yes" }, outside.value.transferId))).toEqual([
      "no-steward at still",
    ]);
    granted(await reply({ on: "2026-11-20" }, outside.value.transferId));
    expect(await db.read.holderConfirmation.count()).toBe(0);
  });
});

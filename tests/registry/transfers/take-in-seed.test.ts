import { beforeEach, expect, test } from "vitest";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { takeInSeed } from "@/lib/registry/transfers/take-in-seed";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { takeInSchema } from "@/lib/schemas/transfers/transfer";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aJarOfBeans, faultsOf, give, gramsIn, owner, today } from "./transfers-in-tests";

onEveryEngine("seed taken in", (fresh) => {
  let db: Database;
  let beans: Awaited<ReturnType<typeof aJarOfBeans>>;

  beforeEach(async () => {
    db = await fresh();
    beans = await aJarOfBeans(db);
  });

  const take = async (typed: Readonly<Record<string, string>> = {}) => {
    const start = {
      kind: "gift",
      on: "2026-11-05",
      variety: "Hamble Long",
      unit: "g",
      amount: "36",
      holder: "Oda Fenlight",
    };
    const told = "story" in typed || "nothingTold" in typed ? {} : { story: "My mother sowed it under the pears." };
    return takeInSeed(db, owner, granted(parseForm(takeInSchema("north"), { ...start, ...told, ...typed })), today);
  };

  test("from outside is a founder in quarantine, with its story, entry and transfer; the record can be taken back", async () => {
    const done = granted(
      await take({
        ...{ giverWords: "a cousin from over the hill", year: "2024~", yearWords: "two summers old", number: "Hill 1" },
        ...{ treatment: "unknown", identityGrade: "told by a keeper", looked: "two weevil holes, no mould" },
        ...{ strain: "Hill keeping", donorNumber: "7" },
      }),
    );
    const lot = await db.read.lot.findUniqueOrThrow({
      where: { id: done.value.lotId },
      include: { ledger: true, stories: true, observations: true, strain: true, parents: true, transfersTo: true },
    });
    expect(lot).toMatchObject({
      ...{ number: "Hill 1", kind: "founder", origin: "received", holderId: beans.oda, donorNumber: "7" },
      ...{ status: "quarantine", statusReason: "came in on 2026-11-05; not compared yet", treatment: "unknown" },
      ...{ year: "2024~", yearWords: "two summers old", parents: [] },
    });
    expect(lot.strain?.name).toBe("Hill keeping");
    expect(lot.stories.map((each) => [each.words, each.teller, each.toldOn])).toEqual([
      ["My mother sowed it under the pears.", "a cousin from over the hill", "2026-11-05"],
    ]);
    expect(lot.observations.map((each) => each.words)).toEqual([
      "Looked at when it came in: two weevil holes, no mould",
    ]);
    expect(lot.ledger.map((each) => [each.kind, each.amount, each.other, each.transferId])).toEqual([
      ["received", 36, "a cousin from over the hill", done.value.transferId],
    ]);
    expect(lot.transfersTo).toMatchObject([{ kind: "gift", lotId: lot.id, newLotId: lot.id, toStewardId: beans.oda }]);
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect([await db.read.lot.count(), await db.read.transfer.count(), await db.read.strain.count()]).toEqual([
      1, 0, 0,
    ]);
  });

  test("of an amount that nobody weighed has no entry, and none is made up", async () => {
    const { value } = granted(await take({ amount: "", nothingTold: "yes" }));
    expect(await gramsIn(db, value.lotId)).toBeNull();
    expect(await db.read.story.count()).toBe(0);
  });

  test("from a steward whose lot is on record is part of it, with an entry on each side, whatever stands against that lot", async () => {
    await db.write.lot.update({ where: { id: beans.lotId }, data: { status: "hold", statusReason: "looks odd" } });
    const { value } = granted(
      await take({ kind: "exchange", giver: "Oda Fenlight", fromLot: "ham 3", holder: "Rin Olderwick", amount: "20" }),
    );
    const lot = await db.read.lot.findUniqueOrThrow({ where: { id: value.lotId }, include: { parents: true } });
    expect([lot.kind, lot.status, lot.holderId, lot.parents[0]?.parentLotId]).toEqual([
      ...["split", "quarantine", beans.rin, beans.lotId],
    ]);
    expect([await gramsIn(db, beans.lotId), await gramsIn(db, value.lotId)]).toEqual([200, 20]);
    const sides = await db.read.ledgerEntry.findMany({ where: { transferId: value.transferId } });
    expect(sides.map((each) => each.kind).sort()).toEqual(["given", "received"]);
    expect(await db.read.transfer.findUniqueOrThrow({ where: { id: value.transferId } })).toMatchObject({
      ...{ kind: "exchange", lotId: beans.lotId, newLotId: lot.id, fromStewardId: beans.oda, toStewardId: beans.rin },
    });
  });

  test("back from a loan names what was lent and keeps the promise", async () => {
    const lent = granted(await give(db, beans.lotId, { kind: "loan", promise: "brings 20 g back", replyDue: "2028" }));
    const { value } = granted(
      await take({ kind: "return", giver: "Rin Olderwick", answers: lent.value.transferId, keepsPromise: "yes" }),
    );
    const transfer = await db.read.transfer.findUniqueOrThrow({ where: { id: value.transferId } });
    expect(transfer).toMatchObject({
      kind: "return",
      lotId: lent.value.newLotId,
      newLotId: value.lotId,
      fromStewardId: beans.rin,
    });
    expect((await db.read.promise.findFirstOrThrow()).keptOn).toBe("2026-11-05");
  });

  test("is refused without a story or the word that nothing was told, for an unknown name, and for a day to come", async () => {
    expect(faultsOf(await take({ story: "" }))).toEqual(["missing at story"]);
    expect(faultsOf(await take({ story: "a tale", nothingTold: "yes" }))).toEqual(["told-and-not at story"]);
    expect(faultsOf(await take({ variety: "Hamble Lung" }))).toEqual(["unknown-variety at variety"]);
    expect(faultsOf(await take({ giver: "Nobody" }))).toEqual(["unknown-steward at giver"]);
    expect(faultsOf(await take({ giver: "Rin Olderwick", giverWords: "Rin" }))).toEqual(["two-givers at giverWords"]);
    expect(faultsOf(await take({ fromLot: "Ham 99" }))).toEqual(["unknown-lot at fromLot"]);
    expect(faultsOf(await take({ fromLot: "Ham 3" }))).toEqual(["own-hand at fromLot"]);
    expect(faultsOf(await take({ fromLot: "Ham 3", holder: "Rin Olderwick", amount: "" }))).toEqual([
      "missing at amount",
    ]);
    expect(faultsOf(await take({ answers: "no-such" }))).toEqual(["unknown at answers"]);
    expect(faultsOf(await take({ on: "2027-01" }))).toEqual(["in-the-future at on"]);
    expect(faultsOf(await take({ number: "HAM 3" }))).toEqual(["number-taken at number"]);
    expect(faultsOf(await take({ unit: "seeds" }))).toEqual(["no-seed-weight at unit"]);
    expect(await db.read.lot.count()).toBe(1);
  });
});

import { uuidv7 } from "uuidv7";
import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { balanceOf } from "@/lib/registry/ledger/balance";
import { type SplitToWrite, writeSplit } from "@/lib/registry/lots/write-split";
import { parseDate } from "@/lib/science/dates/parse-date";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, anEntry, aSteward, aVariety } from "./lots-in-tests";

const owner = ownerHere();

onEveryEngine("a split written in a running change", (fresh) => {
  let db: Database;
  let lotId: string;
  let oda: string;
  let rin: string;

  beforeEach(async () => {
    db = await fresh();
    oda = await aSteward(db, "Oda Fenlight");
    rin = await aSteward(db, "Rin Olderwick");
    lotId = await aLot(db, await aVariety(db), {
      number: "Ham 3",
      year: "2019",
      holderId: oda,
      thousandSeedGrams: 500,
      treatment: "none",
      isolationGrade: "partly",
      identityGrade: "told by a keeper",
    });
    await anEntry(db, lotId, "harvested", 100, "2019-10-10");
  });

  const split = (more: Partial<SplitToWrite> = {}) =>
    perform(db, owner, { action: "record", title: "A split" }, (change, tx) =>
      writeSplit(change, tx, {
        lotId,
        amount: 40,
        unit: "g",
        on: granted(parseDate("2026-03-01")),
        number: "Ham 3 b",
        holderId: rin,
        reason: "a second place",
        override: null,
        stewardId: null,
        ...more,
      }),
    );

  const faults = (outcome: Awaited<ReturnType<typeof split>>) =>
    outcome.ok ? [] : outcome.refusals.map((each) => [each.code, each.path.join(".")]);

  test("both ledgers say so, the new lot takes along what is said of the seed, and the making keeps the reason", async () => {
    const { value } = granted(await split());
    const made = await db.read.lot.findUniqueOrThrow({
      where: { id: value.lotId },
      include: { ledger: true, parents: true, making: true },
    });
    expect(made).toMatchObject({
      number: "Ham 3 b",
      code: value.code,
      kind: "split",
      holderId: rin,
      year: "2019",
      thousandSeedGrams: 500,
      treatment: "none",
      isolationGrade: "partly",
      identityGrade: "told by a keeper",
      status: null,
      ledger: [{ kind: "received", amount: 40, unit: "g", other: "Ham 3", otherLotId: lotId, otherStewardId: oda }],
      parents: [{ parentLotId: lotId, share: 1 }],
      making: { kind: "split", on: "2026-03-01", reason: "a second place" },
    });
    const parted = await db.read.lot.findUniqueOrThrow({ where: { id: lotId }, include: { ledger: true } });
    expect(parted.ledger.find((each) => each.kind === "given")).toMatchObject({
      amount: 40,
      other: "Rin Olderwick",
      otherStewardId: rin,
      otherLotId: made.id,
    });
    expect(balanceOf(parted.ledger, 500).grams).toBe(60);
    expect(balanceOf(made.ledger, 500).grams).toBe(40);
  });

  test("seeds are taken by the lot's own weight, and a copy of one's own names the lot", async () => {
    const { value } = granted(await split({ unit: "seeds", amount: 60, holderId: oda, number: null }));
    expect(value.number).toBe(value.code);
    const parted = await db.read.lot.findUniqueOrThrow({ where: { id: lotId }, include: { ledger: true } });
    // 60 seeds at 500 g a thousand are 30 g.
    expect(balanceOf(parted.ledger, 500).grams).toBe(70);
    expect(parted.ledger.find((each) => each.kind === "given")).toMatchObject({
      other: value.code,
      otherStewardId: null,
    });
  });

  test("both entries name the transfer that it is", async () => {
    const { value } = granted(
      await perform(db, owner, { action: "record", title: "A gift" }, (change, tx) =>
        writeSplit(change, tx, {
          ...{ lotId, amount: 10, unit: "g", on: granted(parseDate("2026-03-01")), number: null, holderId: rin },
          ...{ reason: null, override: null, stewardId: oda, status: "quarantine" },
          transfer: async (newLotId) => {
            const id = uuidv7();
            const day = { on: "2026-03-01", onFirst: "2026-03-01", onLast: "2026-03-01" };
            const sides = { lotId, newLotId, fromStewardId: oda, toStewardId: rin };
            await change.create("Transfer", { id, kind: "gift", ...sides, ...day, amount: 10 });
            return id;
          },
        }),
      ),
    );
    const [out, into] = await db.read.ledgerEntry.findMany({
      where: { id: { in: [value.outEntryId, value.inEntryId] } },
      include: { transfer: true },
    });
    expect(out?.transfer?.newLotId).toBe(value.lotId);
    expect(into?.transferId).toBe(out?.transferId);
    expect((await db.read.lot.findUniqueOrThrow({ where: { id: value.lotId } })).status).toBe("quarantine");
  });

  test("more than the jar holds, nothing, half a seed and a number that is taken are refused, and nothing is written", async () => {
    expect(faults(await split({ amount: 100.6 }))).toEqual([["balance-below-zero", "amount"]]);
    expect(faults(await split({ amount: 0, number: "HAM 3" }))).toEqual([
      ["nothing", "amount"],
      ["number-taken", "number"],
    ]);
    expect(faults(await split({ amount: 1.5, unit: "seeds" }))).toEqual([["seeds-not-whole", "amount"]]);
    await db.write.lot.update({ where: { id: lotId }, data: { thousandSeedGrams: null } });
    expect(faults(await split({ amount: 10, unit: "seeds" }))).toEqual([["no-seed-weight", "unit"]]);
    expect(faults(await split({ lotId: uuidv7() }))).toEqual([["unknown", "lot"]]);
    expect(await db.read.lot.count()).toBe(1);
    expect(await db.read.ledgerEntry.count()).toBe(1);
  });

  test.each([
    ["hold", "on-hold"],
    ["quarantine", "in-quarantine"],
    ["closed", "closed"],
  ] as const)(
    "a lot in %s is parted only with a reason, which is kept, and its part stands so too",
    async (status, code) => {
      await db.write.lot.update({ where: { id: lotId }, data: { status, statusReason: "yellow ears in 2024" } });
      expect(faults(await split())).toEqual([[code, "override"]]);
      const { value } = granted(await split({ override: "a sample for the grow-out beside it" }));
      const made = await db.read.lot.findUniqueOrThrow({ where: { id: value.lotId }, include: { making: true } });
      expect(made.status).toBe(status);
      expect(made.making?.reason).toMatch(
        /^a second place; although lot Ham 3 is .+: a sample for the grow-out beside it$/,
      );
    },
  );

  test.each([
    ["finished", "no-seed-left"],
    ["dead", "dead"],
    ["discarded", "discarded"],
    ["not for seed", "not-for-seed"],
  ] as const)("a lot that is %s is never parted", async (status, code) => {
    await db.write.lot.update({ where: { id: lotId }, data: { status } });
    expect(faults(await split({ override: "all the same" }))).toEqual([[code, "lot"]]);
  });

  test("treated seed takes its word along, and needs a reason", async () => {
    const data = { treatment: "chemical", treatmentSubstance: "thiram" };
    await db.write.lot.update({ where: { id: lotId }, data });
    expect(faults(await split())).toEqual([["treated", "override"]]);
    const { value } = granted(await split({ override: "back to the seed house" }));
    expect(await db.read.lot.findUniqueOrThrow({ where: { id: value.lotId } })).toMatchObject(data);
  });

  test("taken back, the record is as it was", async () => {
    const done = granted(await split());
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect(await db.read.lot.findMany({ select: { number: true } })).toEqual([{ number: "Ham 3" }]);
    expect(await db.read.ledgerEntry.count()).toBe(1);
    expect(await db.read.lotMaking.count()).toBe(0);
  });
});

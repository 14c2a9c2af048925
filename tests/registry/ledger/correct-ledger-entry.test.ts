import { uuidv7 } from "uuidv7";
import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { balanceOf } from "@/lib/registry/ledger/balance";
import { correctLedgerEntry, takeBackLedgerEntry } from "@/lib/registry/ledger/correct-ledger-entry";
import { recordLedgerEntry } from "@/lib/registry/ledger/record-ledger-entry";
import type { LedgerEntryInput } from "@/lib/schemas/ledger/ledger-entry";
import { parseDate } from "@/lib/science/dates/parse-date";
import { emptyRegistry, granted } from "../../setup/registry";
import { aLot, aVariety } from "../lots/lots-in-tests";

const owner = ownerHere();
const today = "2026-11-24";
let db: Database;
let lotId: string;

beforeEach(async () => {
  db = await emptyRegistry();
  lotId = await aLot(db, await aVariety(db), { number: "Ham 3", year: "2019" });
});

const entry = (kind: LedgerEntryInput["kind"], amount: number, on: string, more: Partial<LedgerEntryInput> = {}) => ({
  kind,
  amount,
  on: granted(parseDate(on)),
  unit: "g" as const,
  other: null,
  notes: null,
  ...more,
});

const record = (...given: Parameters<typeof entry>) => recordLedgerEntry(db, owner, lotId, entry(...given), today);

async function grams(): Promise<number | null> {
  const lot = await db.read.lot.findUniqueOrThrow({ where: { id: lotId }, include: { ledger: true } });
  return balanceOf(lot.ledger, lot.thousandSeedGrams).grams;
}

const sentences = (outcome: Awaited<ReturnType<typeof record>>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => each.sentence);

test("a correction is a new entry that points to the old one", async () => {
  granted(await record("harvested", 100, "2019-10-10"));
  const { value } = granted(await record("given", 30, "2020-01-01"));
  const right = { ...entry("given", 13, "2020-01-01"), reason: "read 13 as 30" };
  const corrected = granted(await correctLedgerEntry(db, owner, value.entryId, right, today));
  expect(await grams()).toBe(87);
  expect(await db.read.ledgerEntry.count()).toBe(3);
  const changeSet = await db.read.changeSet.findUniqueOrThrow({ where: { id: corrected.changeSetId ?? "" } });
  expect(changeSet.reason).toBe("read 13 as 30");
  const again = await correctLedgerEntry(db, owner, value.entryId, right, today);
  expect(sentences(again)).toEqual(['"given 30 g, 2020-01-01" counts no more; correct the entry that stands']);
});

test("an entry taken back stays to be read, and its taking back can be undone", async () => {
  granted(await record("harvested", 100, "2019-10-10"));
  const { value } = granted(await record("given", 30, "2020-01-01"));
  const back = granted(await takeBackLedgerEntry(db, owner, value.entryId, "it was another jar"));
  expect([await grams(), await db.read.ledgerEntry.count()]).toEqual([100, 3]);
  granted(await undoChangeSet(db, owner, back.changeSetId ?? ""));
  expect(await grams()).toBe(70);
});

test("a harvest that later entries live on cannot be taken back, nor by the history", async () => {
  const { value, changeSetId } = granted(await record("harvested", 100, "2019-10-10"));
  const given = granted(await record("given", 30, "2020-01-01"));
  const outcome = await takeBackLedgerEntry(db, owner, value.entryId, "wrong lot");
  expect(outcome.ok ? [] : outcome.refusals.map((each) => each.sentence)).toEqual([
    '"harvested 100 g, 2019-10-10" cannot be taken back: it would leave −30 g in the jar on 2020-01-01; weigh the jar and enter that first ("weighed")',
  ]);
  const undo = (id: string | null) => undoChangeSet(db, owner, id ?? "");
  const undone = await undo(changeSetId);
  expect(undone.ok ? [] : undone.refusals.map((each) => each.sentence)).toEqual([
    '"what came into lot Ham 3" cannot be taken back: it would leave −30 g in the jar on 2020-01-01; weigh the jar and enter that first ("weighed")',
  ]);
  expect(await grams()).toBe(70);
  granted(await undo(given.changeSetId));
  granted(await undo(changeSetId));
  expect(await db.read.ledgerEntry.count()).toBe(0);
});

test("what a blend wrote stays a blend's entry, and a transfer's side is corrected there", async () => {
  granted(await record("harvested", 100, "2019-10-10"));
  const common = { lotId, on: "2021", onFirst: "2021-01-01", onLast: "2021-12-31", unit: "g" };
  const blend = await db.write.ledgerEntry.create({
    data: { ...common, id: uuidv7(), kind: "blended-out", amount: 20 },
  });
  const asGift = { ...entry("given", 20, "2021"), reason: "was a gift" };
  expect((await correctLedgerEntry(db, owner, blend.id, asGift, today)).ok).toBe(false);
  const right = { ...asGift, kind: "blended-out" as const, amount: 25 };
  granted(await correctLedgerEntry(db, owner, blend.id, right, today));
  expect(await grams()).toBe(75);
});

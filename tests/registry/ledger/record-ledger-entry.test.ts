import { uuidv7 } from "uuidv7";
import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { balanceOf } from "@/lib/registry/ledger/balance";
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

test("entries of a jar sum to what is left in it", async () => {
  granted(await record("harvested", 210.5, "2019-10"));
  granted(await record("tested", 5.5, "2020-02-14"));
  granted(await record("given", 25, "2020-03-01", { other: "the school garden" }));
  expect(await grams()).toBe(180);
});

test("taking more than is there is refused with the most that can be taken", async () => {
  granted(await record("harvested", 100, "2019-10-10"));
  granted(await record("sown", 70, "2021-05-01"));
  const outcome = await record("given", 40, "2020-03-01");
  expect(sentences(outcome)).toEqual([
    '40 would leave −10 g in the jar on 2021-05-01; write at most 30 g, or weigh the jar and enter that first ("weighed")',
  ]);
  expect(await grams()).toBe(30);
});

test("half a gram of debt is within weighing error", async () => {
  granted(await record("harvested", 100, "2019-10-10"));
  granted(await record("sown", 100.4, "2021-05-01"));
  expect((await record("given", 0.2, "2021-06-01")).ok).toBe(false);
});

test("seed cannot leave a jar of which nothing is on record; a weighing makes it known", async () => {
  const outcome = await record("sown", 10, "2021-05-01");
  expect(sentences(outcome)).toEqual([
    '10 would leave −10 g in the jar on 2021-05-01; weigh the jar and enter that first ("weighed")',
  ]);
  granted(await record("weighed", 60, "2021-04-01"));
  granted(await record("sown", 10, "2021-05-01"));
  expect(await grams()).toBe(50);
});

test("an old debt of an imported notebook is no reason to refuse what does not deepen it", async () => {
  await db.write.ledgerEntry.create({
    data: { id: uuidv7(), lotId, on: "2020", onFirst: "2020-01-01", onLast: "2020-12-31", kind: "sown", amount: 9 },
  });
  granted(await record("weighed", 30, "2021-04-01"));
  granted(await record("given", 10, "2022-01-01"));
  expect(await grams()).toBe(20);
});

test("an amount of nothing is a weighing's alone", async () => {
  expect(sentences(await record("given", 0, "2020-01-01"))).toEqual([
    "0 moves no seed; write an amount above 0, or enter it as weighed",
  ]);
  granted(await record("weighed", 0, "2020-01-01"));
  expect(await grams()).toBe(0);
});

test("seeds are counted where the lot's seed weight is known, and refused where it is not", async () => {
  granted(await record("harvested", 100, "2019-10-10"));
  const outcome = await record("sown", 50, "2020-05-01", { unit: "seeds" });
  expect(outcome.ok ? [] : outcome.refusals.map((each) => each.path)).toEqual([["unit"]]);
  await db.write.lot.update({ where: { id: lotId }, data: { thousandSeedGrams: 400 } });
  granted(await record("sown", 50, "2020-05-01", { unit: "seeds" }));
  // 50 seeds at 400 g a thousand are 20 g
  expect(await grams()).toBe(80);
  expect((await record("sown", 2.5, "2020-05-01", { unit: "seeds" })).ok).toBe(false);
});

test("what looks implausible is written and warned of", async () => {
  granted(await record("harvested", 100, "2019-10-10"));
  const early = granted(await record("received", 5, "2018-03-01")).value;
  expect(early.warnings.map((each) => each.code)).toEqual(["before-harvest"]);
  const heavy = granted(await record("weighed", 120, "2022-03-01")).value;
  expect(heavy.warnings.map((each) => each.code)).toEqual(["weighed-more"]);
  const later = granted(await record("given", 5, "2027-01-01")).value;
  expect(later.warnings.map((each) => each.code)).toEqual(["not-yet"]);
  const twice = granted(await record("given", 5, "2027-01-01")).value;
  expect(twice.warnings.map((each) => each.code)).toEqual(["not-yet", "twice"]);
});

test("the other side is joined to the steward or lot of that name, and kept as written", async () => {
  const other = await aLot(db, (await db.read.variety.findFirstOrThrow()).id, { number: "Ham 4" });
  granted(await record("harvested", 100, "2019-10-10", { other: "ham 4" }));
  const stored = await db.read.ledgerEntry.findFirstOrThrow();
  expect([stored.other, stored.otherLotId]).toEqual(["ham 4", other]);
});

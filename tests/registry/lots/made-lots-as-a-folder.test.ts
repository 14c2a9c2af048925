import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { figuresOfAll } from "@/lib/registry/figures/read-figures";
import { blendLots } from "@/lib/registry/lots/blend-lots";
import { splitLot } from "@/lib/registry/lots/split-lot";
import { parseDate } from "@/lib/science/dates/parse-date";
import { emptyRegistry, granted } from "../../setup/registry";
import { aLot, anEntry, aSteward, aTest, aVariety } from "./lots-in-tests";

const owner = ownerHere();
const on = granted(parseDate("2026-03-01"));
const nothing = { number: null, holder: null, newHolder: null, override: null, notes: null };

/** What is said of the lots that were made, by number, with their ledgers, makings and figures. */
async function told(db: Database) {
  const figures = await figuresOfAll(db);
  const lots = await db.read.lot.findMany({
    where: { kind: { in: ["blend", "split"] } },
    include: {
      ledger: true,
      making: true,
      parents: { include: { parent: true } },
      containers: { include: { place: true } },
    },
    orderBy: { number: "asc" },
  });
  return lots.map(({ id, number, kind, year, yearWords, thousandSeedGrams, treatment, ...lot }) => ({
    ...{ number, kind, year, yearWords, thousandSeedGrams, treatment },
    ledger: lot.ledger.map((each) => `${each.on} ${each.kind} ${each.amount} ${each.unit} ${each.other}`).sort(),
    making: [lot.making?.kind, lot.making?.on, lot.making?.reason],
    parents: lot.parents.map((each) => `${each.parent.number} ${each.share?.toFixed(6)}`).sort(),
    containers: lot.containers.map((each) => `${each.kind} ${each.amount} ${each.place?.name}`),
    grams: figures.get(id)?.gramsOnHand,
    founders: figures.get(id)?.founders,
  }));
}

test("a blend and a split go out in the folder and come in again as they were", async () => {
  const db = await emptyRegistry();
  const holderId = await aSteward(db, "Oda Fenlight");
  const varietyId = await aVariety(db);
  const lot = async (number: string, year: string, thousandSeedGrams: number) => {
    const id = await aLot(db, varietyId, {
      number,
      year,
      thousandSeedGrams,
      holderId,
      treatment: "none",
      origin: "received",
    });
    await anEntry(db, id, "received", 100, year);
    await aTest(db, id, `T ${number}`, "2025-02-01", 50, 40);
    return id;
  };
  const [old, young] = [await lot("Ham 3", "2015", 500), await lot("Ham 9", "2024", 300)];
  const parts = [old, young].map((each) => ({ lot: each, amount: 30, unit: "g" as const, living: null }));
  granted(await blendLots(db, owner, { ...nothing, parts, on, number: "Ham 10", reason: "breadth, and vigour" }));
  const split = {
    ...nothing,
    amount: 40,
    unit: "seeds" as const,
    on,
    reason: "a copy",
    container: "jar",
    place: "Loft",
  };
  granted(await splitLot(db, owner, young, { ...split, number: "Ham 11", holder: "Oda Fenlight" }));

  const again = await emptyRegistry();
  granted(await importFolder(again, owner, await exportFolder(db)));
  const before = await told(db);
  expect(before).toHaveLength(2);
  expect(await told(again)).toEqual(before);
});

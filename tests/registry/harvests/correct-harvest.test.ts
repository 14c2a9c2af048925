import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { correctHarvest } from "@/lib/registry/harvests/correct-harvest";
import { recordHarvest } from "@/lib/registry/harvests/record-harvest";
import { balanceOf } from "@/lib/registry/ledger/balance";
import type { NewHarvestInput } from "@/lib/schemas/harvests/harvest-entry";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { anEntry } from "../lots/lots-in-tests";
import { aGrowOut, harvest, weighed } from "./a-grow-out";

const owner = ownerHere();
const today = "2026-11-24";

async function harvested(db: Database, growOutId: string, more: Partial<NewHarvestInput>) {
  return granted(await recordHarvest(db, owner, growOutId, harvest(more), today)).value;
}

const correct = (db: Database, harvestId: string, more: Partial<NewHarvestInput>) =>
  correctHarvest(db, owner, harvestId, { ...harvest(more), reason: "read the scales wrongly" }, today);

async function grams(db: Database, lotId: string): Promise<number | null> {
  const lot = await db.read.lot.findUniqueOrThrow({ where: { id: lotId }, include: { ledger: true } });
  return balanceOf(lot.ledger, lot.thousandSeedGrams).grams;
}

onEveryEngine("a harvest put right", (fresh) => {
  it("stands anew, and what it was stays to be read", async () => {
    const db = await fresh();
    const { id, plants } = await aGrowOut(db, { plants: 3 });
    const { harvestId, lotId } = await harvested(db, id, { parents: weighed(plants, [10, 20, 30]) });
    const [one, two] = plants;
    const done = granted(await correct(db, harvestId, { parents: weighed([one, two] as string[], [12, 20]) }));
    expect(await db.read.harvest.findUnique({ where: { id: harvestId } })).toMatchObject({ seedParents: 2, grams: 32 });
    expect(await db.read.harvestSeedParent.count()).toBe(2);
    expect(await grams(db, lotId)).toBe(32);
    expect(await db.read.ledgerEntry.count({ where: { lotId } })).toBe(2);
    expect(await db.read.growOut.findUnique({ where: { id } })).toMatchObject({ seedParents: 2, seedShares: "plants" });
    expect(await db.read.plant.findMany({ orderBy: { id: "asc" } })).toMatchObject([
      { kept: true, seedGrams: 12 },
      { kept: true, seedGrams: 20 },
      { kept: null, seedGrams: null },
    ]);
    const removed = await db.read.change.count({
      where: { changeSetId: done.changeSetId as string, action: "remove" },
    });
    expect(removed).toBe(3);
    granted(await undoChangeSet(db, owner, done.changeSetId as string));
    expect(await grams(db, lotId)).toBe(60);
    expect(await db.read.growOut.findUnique({ where: { id } })).toMatchObject({ seedParents: 3 });
  });

  it("moves the day of its lot and of its entry, and takes the entry back where nobody weighed it after all", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const { harvestId, lotId } = await harvested(db, id, { seedParents: 5, grams: 80, bulked: "equal seeds" });
    granted(await correct(db, harvestId, { seedParents: 5, bulked: "equal seeds" }));
    expect(await grams(db, lotId)).toBeNull();
    granted(await correct(db, harvestId, { seedParents: 5, grams: 75, bulked: "equal seeds" }));
    expect(await grams(db, lotId)).toBe(75);
  });

  it("is refused where the jar would have held less than was taken from it", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const { harvestId, lotId } = await harvested(db, id, { seedParents: 5, grams: 80 });
    await anEntry(db, lotId, "given", 50, "2026-10-01");
    const outcome = await correct(db, harvestId, { seedParents: 5, grams: 40 });
    expect(outcome.ok ? [] : outcome.refusals.map(({ code, path }) => [code, path])).toEqual([
      ["balance-below-zero", ["grams"]],
    ]);
    expect(await grams(db, lotId)).toBe(30);
    expect(await db.read.harvest.findUnique({ where: { id: harvestId } })).toMatchObject({ grams: 80 });
  });

  it("is refused where several entries brought its seed in, or where there is none", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const { harvestId, lotId } = await harvested(db, id, { seedParents: 5, grams: 80 });
    await anEntry(db, lotId, "harvested", 20, "2026-10-01");
    const several = await correct(db, harvestId, { seedParents: 5, grams: 90 });
    expect(several.ok ? [] : several.refusals.map(({ code }) => code)).toEqual(["several-entries"]);
    expect((await correct(db, harvestId, { seedParents: 6, grams: 80 })).ok).toBe(true);
    const unknown = await correct(db, "none", { seedParents: 5 });
    expect(unknown.ok ? [] : unknown.refusals.map(({ code }) => code)).toEqual(["unknown"]);
  });
});

import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { figuresOfAll } from "@/lib/registry/figures/read-figures";
import { LEFT_OUT, putTogether } from "@/lib/registry/harvests/put-together";
import { recordHarvest } from "@/lib/registry/harvests/record-harvest";
import { balanceOf } from "@/lib/registry/ledger/balance";
import type { NewHarvestInput } from "@/lib/schemas/harvests/harvest-entry";
import type { PutTogetherInput } from "@/lib/schemas/harvests/put-together";
import { parseDate } from "@/lib/science/dates/parse-date";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { anEntry } from "../lots/lots-in-tests";
import { aGrowOut, harvest, weighed } from "./a-grow-out";
import expected from "./expected-sizes.json";

const owner = ownerHere();
const heavy = [92, 61, 40, 12, 9, 8, 7, 6, 6, 5, 4, 3, 2, 2];

async function apart(db: Database, more: Partial<NewHarvestInput> = {}) {
  const { id, plants } = await aGrowOut(db, { plants: 14, plantsStanding: 60 });
  const input = harvest({ bulked: "kept apart", parents: weighed(plants, heavy), ...more });
  return { id, ...granted(await recordHarvest(db, owner, id, input, "2026-11-24")).value };
}

const together = (db: Database, harvestId: string, more: Partial<PutTogetherInput> = {}) =>
  putTogether(db, owner, harvestId, {
    on: granted(parseDate("2026-11-02")),
    way: "equal",
    leftOut: null,
    wanted: null,
    note: null,
    ...more,
  });

const codes = (outcome: Awaited<ReturnType<typeof together>>) =>
  outcome.ok ? [] : outcome.refusals.map(({ code, path }) => `${code} ${path.join(".")}`);

async function grams(db: Database, lotId: string): Promise<number | null> {
  return balanceOf(await db.read.ledgerEntry.findMany({ where: { lotId } }), null).grams;
}

onEveryEngine("bags that were kept apart", (fresh) => {
  it("are put together in equal parts: the lot counts as the plants in equal shares", async () => {
    const db = await fresh();
    const { id, harvestId, lotId } = await apart(db);
    expect((await figuresOfAll(db)).get(lotId)?.effectiveSize).toBeCloseTo(expected.greedy, 9);
    expect(granted(await together(db, harvestId)).value).toMatchObject({ total: 28, seedParents: 14 });
    expect((await figuresOfAll(db)).get(lotId)?.effectiveSize).toBeCloseTo(expected["greedy, equal shares"], 9);
    // 257 g in the bags, 2 g of each of 14 in the jar
    expect(await grams(db, lotId)).toBe(28);
    expect(await db.read.growOut.findUnique({ where: { id } })).toMatchObject({ seedParents: 14, seedShares: "equal" });
    const parents = await db.read.harvestSeedParent.findMany({ orderBy: { id: "asc" } });
    expect(parents[0]).toMatchObject({ grams: 92, share: 1 / 14, lost: null });
    expect(codes(await together(db, harvestId))).toEqual(["not-apart way"]);
  });

  it("are put together without the smallest, which then are no seed parents", async () => {
    const db = await fresh();
    const { id, harvestId, lotId } = await apart(db, { detasselled: 14, seedParentsDetasselled: 14 });
    expect(codes(await together(db, harvestId, { leftOut: 1 }))).toEqual(["no-gain leftOut"]);
    expect(granted(await together(db, harvestId, { leftOut: 2 })).value).toMatchObject({ total: 36, seedParents: 12 });
    expect(await grams(db, lotId)).toBe(36);
    expect(await db.read.harvestSeedParent.count({ where: { lost: LEFT_OUT } })).toBe(2);
    expect(await db.read.plant.count({ where: { kept: true } })).toBe(12);
    expect(await db.read.growOut.findUnique({ where: { id } })).toMatchObject({
      seedParents: 12,
      seedParentsDetasselled: 12,
    });
  });

  it("are put together as evenly as an amount allows", async () => {
    const db = await fresh();
    const { id, harvestId, lotId } = await apart(db);
    // the eleven small ones hold 64 g; 12 of each of the three heavy ones make 100 g
    expect(granted(await together(db, harvestId, { way: "as even as can be", wanted: 100 })).value.total).toBeCloseTo(
      100,
      9,
    );
    expect(await grams(db, lotId)).toBeCloseTo(100, 9);
    const parents = await db.read.harvestSeedParent.findMany({ orderBy: { id: "asc" } });
    expect(parents.slice(0, 4).map((parent) => parent.grams)).toEqual([12, 12, 12, 12]);
    expect(await db.read.growOut.findUnique({ where: { id } })).toMatchObject({
      seedParents: 14,
      seedShares: "plants",
    });
  });

  it("are tipped together whole", async () => {
    const db = await fresh();
    const { harvestId, lotId } = await apart(db);
    granted(await together(db, harvestId, { way: "all" }));
    expect(await grams(db, lotId)).toBe(257);
    expect(await db.read.harvest.findFirst()).toMatchObject({ bulked: "all together", grams: 257, seedParents: 14 });
  });

  it("are not put together where that cannot be", async () => {
    const db = await fresh();
    const { harvestId, lotId } = await apart(db);
    expect(codes(await together(db, "none"))).toEqual(["unknown harvest"]);
    expect(codes(await together(db, harvestId, { way: "as even as can be" }))).toEqual(["missing wanted"]);
    expect(codes(await together(db, harvestId, { way: "as even as can be", wanted: 300 }))).toEqual([
      "more-than-held wanted",
    ]);
    await anEntry(db, lotId, "given", 100, "2026-10-20");
    expect(codes(await together(db, harvestId))).toEqual(["bags-changed way"]);
  });

  it("are not put together where a bag was not measured", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const input = harvest({ bulked: "kept apart", seedParents: 3, parents: weighed([null, null], [5, 6]) });
    const { harvestId } = granted(await recordHarvest(db, owner, id, input, "2026-11-24")).value;
    expect(codes(await together(db, harvestId))).toEqual(["not-measured way"]);
  });
});

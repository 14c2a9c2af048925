import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { figuresOfAll } from "@/lib/registry/figures/read-figures";
import { recordHarvest } from "@/lib/registry/harvests/record-harvest";
import type { NewHarvestInput } from "@/lib/schemas/harvests/harvest-entry";
import { parseDate } from "@/lib/science/dates/parse-date";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { aLot, anEntry, aSteward } from "../lots/lots-in-tests";
import { aGrowOut, harvest, weighed } from "./a-grow-out";

const owner = ownerHere();
const today = "2026-11-24";

const record = (db: Database, growOutId: string, more: Partial<NewHarvestInput> = {}) =>
  recordHarvest(db, owner, growOutId, harvest(more), today);

const codes = (outcome: Awaited<ReturnType<typeof record>>) =>
  outcome.ok ? [] : outcome.refusals.map((each) => `${each.code} ${each.path.join(".")}`);

const growOutOf = (db: Database, id: string) => db.read.growOut.findUniqueOrThrow({ where: { id } });

onEveryEngine("a harvest", (fresh) => {
  it("of a count in equal seeds becomes a lot with its first entry, and the figures follow", async () => {
    const db = await fresh();
    await aSteward(db, "Ansa Weir");
    const { id } = await aGrowOut(db);
    const done = granted(
      await record(db, id, {
        bulked: "equal seeds",
        seedParents: 20,
        grams: 640,
        seeds: 2000,
        number: "Ford 1",
        holder: "Ansa Weir",
      }),
    );
    const lot = await db.read.lot.findUniqueOrThrow({ where: { number: "Ford 1" }, include: { ledger: true } });
    expect(lot).toMatchObject({ kind: "harvest", growOutId: id, year: "2026-09-20", origin: "own grow-out" });
    // 640 g of 2,000 seeds are 320 g a thousand
    expect(lot.thousandSeedGrams).toBeCloseTo(320, 9);
    expect(lot.ledger).toMatchObject([{ kind: "harvested", amount: 640, unit: "g", on: "2026-09-20" }]);
    expect(await growOutOf(db, id)).toMatchObject({ seedParents: 20, seedShares: "equal", seedSharesCv: null });
    // seed from 20 of 40 plants in equal shares: 4·20·40/(40 + 3·20) = 32, the landmark of the formula
    expect((await figuresOfAll(db)).get(lot.id)?.effectiveSize).toBeCloseTo(32, 9);
    expect(done.value.warnings).toEqual([]);
    expect(await db.read.changeSet.count({ where: { kind: "entry" } })).toBe(1);
  });

  it("of marked plants keeps who gave what, and is taken back as a whole", async () => {
    const db = await fresh();
    const { id, plants } = await aGrowOut(db, { plants: 4 });
    const [a, b, c, d] = plants as [string, string, string, string];
    const parents = [
      ...weighed([a, b, c], [90, 6, 4]),
      { row: 3, plantId: d, grams: null, seeds: null, lost: "rotted or mouldy" },
    ];
    const done = granted(await record(db, id, { parents }));
    const stored = await db.read.harvest.findFirstOrThrow({ include: { parents: { orderBy: { id: "asc" } } } });
    expect(stored).toMatchObject({ seedParents: 3, grams: 100, bulked: "all together" });
    expect(stored.parents.map(({ share }) => share)).toEqual([0.9, 0.06, 0.04, null]);
    expect(await growOutOf(db, id)).toMatchObject({ seedParents: 3, seedShares: "plants" });
    expect(await db.read.plant.findMany({ orderBy: { id: "asc" } })).toMatchObject([
      { kept: true, seedGrams: 90 },
      { kept: true, seedGrams: 6 },
      { kept: true, seedGrams: 4 },
      { kept: false, seedGrams: null },
    ]);
    granted(await undoChangeSet(db, owner, done.changeSetId as string));
    expect(await db.read.harvest.count()).toBe(0);
    expect(await growOutOf(db, id)).toMatchObject({ seedParents: null, seedShares: null });
    expect(await db.read.plant.count({ where: { kept: true } })).toBe(0);
  });

  it("says on the mark what became of the plant", async () => {
    const db = await fresh();
    const { id, plants } = await aGrowOut(db, { plants: 2 });
    for (const plantId of plants) {
      const day = { on: "2026-08-01", onFirst: "2026-08-01", onLast: "2026-08-01" };
      await db.write.mark.create({ data: { id: `m${plantId}`, plantId, intent: "keep", ...day } });
    }
    const [one, other] = weighed(plants, [5, null]);
    granted(await record(db, id, { parents: [one, { ...other, lost: "eaten" }] as never }));
    const fates = await db.read.mark.findMany({ orderBy: { plantId: "asc" } });
    expect(fates.map(({ fate }) => fate)).toEqual(["harvested", "lost"]);
  });

  it("kept apart is one lot whose bags lie beside their seed parents", async () => {
    const db = await fresh();
    const { id, plants } = await aGrowOut(db, { plants: 3 });
    granted(await record(db, id, { bulked: "kept apart", parents: weighed(plants, [10, 20, 30]) }));
    expect(await db.read.lot.count({ where: { growOutId: id } })).toBe(1);
    expect(await db.read.ledgerEntry.findFirst()).toMatchObject({ amount: 60, unit: "g" });
    expect(await db.read.harvestSeedParent.count({ where: { grams: { not: null } } })).toBe(3);
  });

  it("bags of nobody knows which plants give a spread of shares", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    granted(await record(db, id, { seedParents: 3, parents: weighed([null, null, null], [1, 2, 3]) }));
    const growOut = await growOutOf(db, id);
    // mean 2, mean square deviation 2/3: cv = √(2/3)/2
    expect(growOut).toMatchObject({ seedParents: 3, seedShares: "cv" });
    expect(growOut.seedSharesCv).toBeCloseTo(Math.sqrt(2 / 3) / 2, 12);
  });

  it("without a weight leaves the balance and the shares unknown, and says so", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const done = granted(await record(db, id, { seedParents: 12 }));
    expect(done.value.warnings.map(({ code }) => code)).toEqual(["shares-not-known", "not-weighed"]);
    expect(await db.read.ledgerEntry.count()).toBe(0);
    expect(await growOutOf(db, id)).toMatchObject({ seedParents: 12, seedShares: null });
  });

  it("adds to what a notebook told of earlier lots, and does not take its place", async () => {
    const db = await fresh();
    const { id, varietyId } = await aGrowOut(db, { seedParents: 30, seedShares: "equal" });
    const lot = await aLot(db, varietyId, { number: "Ford 0", kind: "harvest", growOutId: id, year: "2025" });
    await anEntry(db, lot, "harvested", 300, "2025-09");
    granted(await record(db, id, { bulked: "equal weight", seedParents: 10, grams: 100 }));
    expect(await db.read.harvest.findMany({ orderBy: { id: "asc" } })).toMatchObject([
      { seedParents: 30, grams: 300, lotId: lot },
      { seedParents: 10, grams: 100 },
    ]);
    const growOut = await growOutOf(db, id);
    // ten plants gave 20 g, twenty gave 10 g: mean 13.33, mean square deviation 22.22; cv = √22.22/13.33 = 0.35355
    expect(growOut).toMatchObject({ seedParents: 30, seedShares: "cv" });
    expect(growOut.seedSharesCv).toBeCloseTo(Math.SQRT1_2 / 2, 12);
    const { assumed } = (await figuresOfAll(db)).get(lot) ?? { assumed: [] };
    expect(assumed.join(" ")).toContain("the same plants (30, at most 40)");
  });

  it("is refused where the plants cannot be", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db, { roguedBeforePollen: 4 });
    const other = await aGrowOut(db, { plants: 1, name: "Mere 2026" });
    expect(codes(await record(db, id))).toEqual(["no-plants seedParents"]);
    expect(codes(await record(db, id, { seedParents: 37 }))).toEqual(["more-seed-than-pollen-parents seedParents"]);
    expect(codes(await record(db, id, { parents: weighed(other.plants, [3]) }))).toEqual([
      "plant-of-another parents.0.fate",
    ]);
    const [plant] = other.plants;
    const twice = [plant, plant] as string[];
    expect(codes(await record(db, other.id, { parents: weighed(twice, [3, 3]) }))).toEqual([
      "plant-twice parents.1.fate",
    ]);
    const lost = weighed(other.plants, [null]).map((parent) => ({ ...parent, lost: "eaten" }));
    expect(codes(await record(db, other.id, { parents: lost }))).toEqual(["no-plants seedParents"]);
    expect(codes(await record(db, "none", { seedParents: 3 }))).toEqual(["unknown growOut"]);
    expect(await db.read.changeSet.count({ where: { kind: "entry" } })).toBe(0);
    expect(await db.read.lot.count({ where: { kind: "harvest" } })).toBe(0);
  });

  it("is refused where the seed together does not fit what each gave", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const three = { seedParents: 3, parents: weighed([null, null, null], [10, 20, 30]) };
    expect(codes(await record(db, id, { ...three, grams: 62 }))).toEqual(["whole-above-parts grams"]);
    expect((await record(db, id, { ...three, grams: 61, number: "A 1" })).ok).toBe(true);
    // three times the smallest bag of 10 g is 30 g, and the scales may be out by half a gram and one part in a hundred
    expect(codes(await record(db, id, { ...three, bulked: "equal weight", grams: 31 }))).toEqual([
      "whole-above-parts grams",
    ]);
    expect((await record(db, id, { ...three, bulked: "equal weight", grams: 30, number: "A 2" })).ok).toBe(true);
    expect(codes(await record(db, id, { seedParents: 2, parents: three.parents }))).toEqual([
      "more-bags-than-parents seedParents",
    ]);
    expect(codes(await record(db, id, { seedParents: 3, number: "a 2" }))).toEqual(["number-taken number"]);
  });

  it("of rows without tassels: seed parents that gave no pollen", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const rows = { bulked: "equal seeds" as const, seedParents: 20, grams: 500 };
    expect(codes(await record(db, id, { ...rows, seedParentsDetasselled: 21 }))).toEqual([
      "more-detasselled-than-parents seedParentsDetasselled",
    ]);
    expect(codes(await record(db, id, { ...rows, detasselled: 15, seedParentsDetasselled: 20 }))).toEqual([
      "more-detasselled-than-all detasselled",
    ]);
    expect(codes(await record(db, id, { ...rows, detasselled: 40, seedParentsDetasselled: 20 }))).toEqual([
      "no-pollen-left detasselled",
    ]);
    expect(codes(await record(db, id, { ...rows, detasselled: 25, seedParentsDetasselled: 0 }))).toEqual([
      "more-detasselled-than-others detasselled",
    ]);
    const done = granted(await record(db, id, { ...rows, detasselled: 20, seedParentsDetasselled: 20 }));
    expect(await growOutOf(db, id)).toMatchObject({ detasselled: 20, seedParentsDetasselled: 20 });
    // 20 plants give all the seed and 20 others all the pollen, as of separate sexes: 4·20·20/40 = 40
    expect((await figuresOfAll(db)).get(done.value.lotId)?.effectiveSize).toBeCloseTo(40, 9);
  });

  it("of separate sexes counts females, and knows no tassels", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db, { crop: "spinach", malesStanding: 18 });
    expect(codes(await record(db, id, { seedParents: 23 }))).toEqual(["more-seed-than-pollen-parents seedParents"]);
    expect(codes(await record(db, id, { seedParents: 22, seedParentsDetasselled: 2 }))).toEqual([
      "no-tassels detasselled",
    ]);
    expect((await record(db, id, { seedParents: 22 })).ok).toBe(true);
  });

  it("that looks odd is stored and warned of", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const parents = weighed([null, null], [100, 110]);
    const early = { on: granted(parseDate("2025-09")), mouldyShare: 0.08 };
    const done = granted(await record(db, id, { seedParents: 2, parents, grams: 100, seeds: 10, ...early }));
    expect(done.value.warnings.map(({ code }) => code)).toEqual([
      "plants-seed-above-harvest",
      "seed-weight-unusual",
      "harvested-before-sown",
      "mouldy",
    ]);
  });
});

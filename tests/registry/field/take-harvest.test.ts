import { uuidv7 } from "uuidv7";
import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { FieldBody, PlantInField } from "@/lib/schemas/field/field-records";
import { onEveryEngine } from "../../setup/engines";
import { aGrowOut } from "../grow-outs/a-grow-out";
import { aPlant, keep, openQuestions, Phone } from "./a-phone";

const seed = (harvestId: string, plant: PlantInField, more: Partial<FieldBody<"taken">> = {}): FieldBody<"taken"> => ({
  ...{ harvestId, plant, fate: "kept", grams: null, seeds: null, replaces: null },
  ...more,
});

const whole = (harvestId: string, parts: string[]): FieldBody<"harvest"> => ({
  ...{ harvestId, parts, bulked: "kept apart", note: null },
});

/** Three plants marked, two of them taken in, the third lost, and the harvest closed. */
function aHarvest(phone: Phone) {
  const plants = ["1", "2", "3"].map((name) => aPlant(name));
  const [first, second, third] = plants as [PlantInField, PlantInField, PlantInField];
  const harvestId = uuidv7();
  const marks = plants.map((plant) => phone.makes("mark", keep(plant)));
  const parts = [
    phone.makes("taken", seed(harvestId, first, { grams: 30 })),
    phone.makes("taken", seed(harvestId, second, { grams: 50 })),
    phone.makes("taken", seed(harvestId, third, { fate: "lost: eaten" })),
  ];
  const ids = parts.map(({ id }) => id);
  return { plants, marks, parts, harvestId, harvest: phone.makes("harvest", whole(harvestId, ids)) };
}

onEveryEngine("a harvest from the field", (fresh) => {
  test("becomes a lot with what each plant gave, once its seed is all there", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db);
    const phone = new Phone(growOutId);
    const { marks, parts, harvest } = aHarvest(phone);
    expect(await phone.sends(db, marks)).toEqual(["taken", "taken", "taken"]);
    expect(await phone.sends(db, [parts[0], harvest])).toEqual(["waiting", "waiting"]);
    expect(await db.read.lot.count()).toBe(0);
    expect(await phone.sends(db, parts)).toEqual(["held", "taken", "taken"]);
    const [made] = await db.read.harvest.findMany({ include: { parents: true, lot: { include: { ledger: true } } } });
    expect(made).toMatchObject({ id: harvest.id, seedParents: 2, grams: 80, bulked: "kept apart", deviceSequence: 7 });
    expect(made?.lot?.ledger).toMatchObject([{ kind: "harvested", amount: 80, unit: "g" }]);
    expect(made?.parents.map(({ grams, lost }) => grams ?? lost).sort()).toEqual([30, 50, "eaten"]);
    const growOut = await db.read.growOut.findUniqueOrThrow({ where: { id: growOutId } });
    expect([growOut.seedParents, growOut.seedShares]).toEqual([2, "plants"]);
    const kept = await db.read.plant.findMany({ orderBy: { name: "asc" } });
    expect(kept.map((plant) => [plant.kept, plant.seedGrams])).toEqual([
      [true, 30],
      [true, 50],
      [false, null],
    ]);
    expect(await phone.sends(db, [harvest, ...parts])).toEqual(["held", "held", "held", "held"]);
  });

  test("that its phone takes back is gone as if it had not been, and its seed waits for another", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db);
    const phone = new Phone(growOutId);
    const { marks, parts, harvest } = aHarvest(phone);
    await phone.sends(db, [...marks, ...parts, harvest]);
    expect(await phone.sends(db, [phone.makes("undo", { of: harvest.id })])).toEqual(["taken"]);
    expect([await db.read.lot.count(), await db.read.harvest.count(), await db.read.ledgerEntry.count()]).toEqual([
      0, 0, 0,
    ]);
    const growOut = await db.read.growOut.findUniqueOrThrow({ where: { id: growOutId } });
    expect([growOut.seedParents, growOut.seedShares]).toEqual([null, null]);
    expect(await db.read.plant.count()).toBe(3);
    const stored = await db.read.fieldRecord.findMany({ orderBy: { sequence: "asc" } });
    expect(stored.map(({ kind, state }) => `${kind} ${state}`)).toEqual([
      ...["mark taken", "mark taken", "mark taken", "taken question", "taken question", "taken question"],
      ...["harvest set aside", "undo taken"],
    ]);
  });

  test("takes seed that was put right as it stands, and leaves out what was taken back", async () => {
    const db = await fresh();
    const phone = new Phone(await aGrowOut(db));
    const [first, second] = [aPlant("1"), aPlant("2")];
    const harvestId = uuidv7();
    const one = phone.makes("taken", seed(harvestId, first, { grams: 30 }));
    const two = phone.makes("taken", seed(harvestId, second, { grams: 50 }));
    const better = phone.makes("taken", seed(harvestId, first, { grams: 33, replaces: one.id }));
    const undo = phone.makes("undo", { of: two.id });
    const harvest = phone.makes("harvest", whole(harvestId, [one.id, two.id]));
    await phone.sends(db, [one, two, better, undo, harvest]);
    const parents = await db.read.harvestSeedParent.findMany();
    expect(parents.map(({ plantId, grams }) => [plantId, grams])).toEqual([[first.id, 33]]);
    const late = phone.makes("taken", seed(harvestId, second, { grams: 9 }));
    expect(await phone.sends(db, [late])).toEqual(["question"]);
  });

  test("takes seed as it was before a correction that was taken back, and none that was taken back itself", async () => {
    const db = await fresh();
    const phone = new Phone(await aGrowOut(db));
    const [first, second] = [aPlant("1"), aPlant("2")];
    const harvestId = uuidv7();
    const one = phone.makes("taken", seed(harvestId, first, { grams: 30 }));
    const wrong = phone.makes("taken", seed(harvestId, first, { grams: 300, replaces: one.id }));
    const other = phone.makes("taken", seed(harvestId, second, { grams: 8 }));
    const better = phone.makes("taken", seed(harvestId, second, { grams: 9, replaces: other.id }));
    const undone = [wrong, other, better].map(({ id }) => phone.makes("undo", { of: id }));
    await phone.sends(db, [one, wrong, other, better, ...undone]);
    await phone.sends(db, [phone.makes("harvest", whole(harvestId, [one.id, other.id]))]);
    const parents = await db.read.harvestSeedParent.findMany();
    expect(parents.map(({ plantId, grams }) => [plantId, grams])).toEqual([[first.id, 30]]);
  });

  test("of a helper, or of more plants than can have given seed, is kept and asked about", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db);
    const phone = new Phone(growOutId);
    const helper = { ...ownerHere(), role: "helper" as const, growOutIds: [growOutId] };
    const { marks, parts, harvest } = aHarvest(phone);
    expect(await phone.sends(db, [...marks, ...parts], { actor: helper })).toEqual([
      ...["taken", "taken", "taken", "waiting", "waiting", "waiting"],
    ]);
    expect(await phone.sends(db, [harvest], { actor: helper })).toEqual(["question"]);
    expect(await openQuestions(db)).toEqual([
      'From the field, harvest of grow-out Sallow 2026, 2026-08-01: "a harvest" makes a lot, which a helper may not; the steward of the grow-out or the owner enters it.',
    ]);
    const few = new Phone(await aGrowOut(db, { name: "Few 2026", plantsStanding: 1 }));
    const other = aHarvest(few);
    expect((await few.sends(db, [...other.marks, ...other.parts, other.harvest])).at(-1)).toBe("question");
    expect((await openQuestions(db)).at(-1)).toContain("seed parents are more than the 1 plants");
    expect(await db.read.lot.count()).toBe(0);
    expect(await phone.sends(db, [marks[0]], { actor: { ...helper, growOutIds: [] } })).toEqual(["held"]);
  });
});

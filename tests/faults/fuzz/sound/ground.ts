import { uuidv7 } from "uuidv7";
import type { z } from "zod";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { recordDrying } from "@/lib/registry/drying/record-drying";
import { planGrowOut } from "@/lib/registry/grow-outs/plan-grow-out";
import { putOnPlot } from "@/lib/registry/grow-outs/put-on-plot";
import { recordFlowering } from "@/lib/registry/grow-outs/record-flowering";
import { recordRogueWalk } from "@/lib/registry/grow-outs/record-rogue-walk";
import { recordStageCounts } from "@/lib/registry/grow-outs/record-stage-counts";
import { sowGrowOut } from "@/lib/registry/grow-outs/sow-grow-out";
import { recordHarvest } from "@/lib/registry/harvests/record-harvest";
import { recordLedgerEntry } from "@/lib/registry/ledger/record-ledger-entry";
import { recordIsolationMethod } from "@/lib/registry/neighbours/record-isolation-method";
import { recordNeighbour } from "@/lib/registry/neighbours/record-neighbour";
import { addPlants } from "@/lib/registry/plants/add-plants";
import { readSettings } from "@/lib/registry/settings/read-settings";
import { defineTrait } from "@/lib/registry/traits/define-trait";
import { giveSeed } from "@/lib/registry/transfers/give-seed";
import { takeInSeed } from "@/lib/registry/transfers/take-in-seed";
import { recordVariety } from "@/lib/registry/varieties/record-variety";
import { dryingSchema } from "@/lib/schemas/drying/drying-forms";
import { floweringNotesSchema, rogueWalkSchema, stageCountsSchema } from "@/lib/schemas/grow-outs/field-counts";
import { PlanGrowOutSchema } from "@/lib/schemas/grow-outs/plan-grow-out";
import { plotOfGrowOutSchema } from "@/lib/schemas/grow-outs/plot-of-grow-out";
import { sowGrowOutSchema } from "@/lib/schemas/grow-outs/sow-grow-out";
import { newHarvestSchema } from "@/lib/schemas/harvests/harvest-entry";
import { ledgerEntrySchema } from "@/lib/schemas/ledger/ledger-entry";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { isolationMethodSchema } from "@/lib/schemas/neighbours/isolation-method";
import { neighbourSchema } from "@/lib/schemas/neighbours/neighbour";
import { addPlantsSchema } from "@/lib/schemas/plants/add-plants";
import { giveSchema, takeInSchema } from "@/lib/schemas/transfers/transfer";
import { accepted } from "@/lib/science/outcome";
import { granted } from "@/tests/setup/registry";
import { aPlant, counted, keep, Phone } from "../../../registry/field/a-phone";

const owner = ownerHere();
const today = "2026-10-20";

function typed<S extends z.ZodType>(schema: S, texts: Readonly<Record<string, unknown>>): z.output<S> {
  return granted(parseForm(schema, texts));
}

/** The grow-outs that forms are about: one that waits to be sown, one that stands, was walked through and gave seed. */
export const toSow = "Peas to sow";
export const inTheRows = "Peas in the rows";
export const quarantined = "Q 1";
/** Another pea, of which nothing is told yet. */
export const alike = "Low Pea";

/**
 * Lays down beside the small notebook what forms want to find: seed that can be taken, a grow-out at each of its steps, a drying, a loan and a promise that are
 * open, questions from the field.
 */
export async function layGround(db: Database): Promise<void> {
  const bent = await db.read.variety.findFirstOrThrow({ where: { name: "Bent Pea" } });
  const [first, second] = await Promise.all(
    ["Pea 1", "Pea 2"].map((number) => db.read.lot.findFirstOrThrow({ where: { number } })),
  );
  if (!first || !second) throw new Error("the small notebook has other lots now");
  const orla = await db.read.person.findFirstOrThrow({ where: { name: "Orla Fennwick" } });
  const settings = await readSettings(db.read);

  await perform(db, owner, { action: "record", title: "Seed that can be taken" }, async (change) => {
    for (const lot of [first, second]) {
      const told = { thousandSeedGrams: 250, status: "usable", treatment: "none", founderLines: "many" };
      await change.update("Lot", lot.id, told);
    }
    return accepted(null);
  }).then(granted);
  const weighed = { on: "2020-03-01", kind: "weighed", amount: "4000", unit: "g" };
  for (const lot of [first, second])
    granted(await recordLedgerEntry(db, owner, lot.id, typed(ledgerEntrySchema("north"), weighed), today));

  const planned = async (name: string) => {
    const plan = { name, steward: orla.name, parents: [{ lot: first.id, share: "100" }], newPlot: `${name} plot` };
    const { value } = granted(await planGrowOut(db, owner, bent.id, typed(PlanGrowOutSchema, plan)));
    return value.growOutId;
  };
  await planned(toSow);
  const standing = await planned(inTheRows);
  const sowing = { on: "2025-04-20", parts: [{ lot: first.id, amount: "100", unit: "g" }] };
  granted(
    await sowGrowOut(db, owner, standing, typed(sowGrowOutSchema("north"), sowing), { settings, today: "2026-10-20" }),
  );
  await fillRows(db, standing);

  const drying = { on: "2026-09-20", startGrams: "200", startPercent: "14", targetPercent: "6" };
  granted(await recordDrying(db, owner, first.id, typed(dryingSchema("north"), drying)));
  const comes = { kind: "gift", on: "2026-02-01", variety: "Bent Pea", number: quarantined, amount: "60", unit: "g" };
  const told = { giverWords: "a neighbour", story: "from the other valley", holder: orla.name };
  granted(await takeInSeed(db, owner, typed(takeInSchema("north"), { ...comes, ...told }), today));
  const loan = { kind: "loan", on: "2026-03-01", amount: "20", unit: "g", newHolder: "The valley school", number: "" };
  const promised = { promise: "brings as much again", replyDue: "2027-10", override: "they know the seed", told: [] };
  granted(
    await giveSeed(db, owner, first.id, typed(giveSchema("north"), { ...loan, ...promised }), { settings, today }),
  );
  await fromTheField(db, standing, orla.stewardId);
  granted(await recordVariety(db, owner, { name: alike, crop: "pea", ownCrop: "no" }));
  const unused = { name: "length of pod", scope: "variety", kind: "measure", unit: "cm", direction: "higher" };
  granted(await defineTrait(db, owner, bent.id, unused));
}

/** Plants, counts, a walk, flowering, a neighbour and a method; then a harvest of which each bag was weighed. */
async function fillRows(db: Database, growOutId: string): Promise<void> {
  const counts = { "up.plants": "60", "up.on": "2025-05-10", "standing.plants": "50", "standing.on": "2025-06-20" };
  granted(await recordStageCounts(db, owner, growOutId, typed(stageCountsSchema("north"), counts), today));
  const walk = { on: "2025-06-25", stage: "before flower", timing: "before", "pulled.weak": "2" };
  granted(await recordRogueWalk(db, owner, growOutId, typed(rogueWalkSchema("north"), walk), today));
  const flowering = { "flower.first": "2025-07-01", "flower.half": "2025-07-08" };
  granted(await recordFlowering(db, owner, growOutId, typed(floweringNotesSchema("north"), flowering), today));
  const plants = { letters: "", from: "1", to: "6", cell: "A", on: "2025-07-02", intent: "keep" };
  granted(await addPlants(db, owner, growOutId, typed(addPlantsSchema("north"), plants)));
  const { distance, ...neighbour } = typed(neighbourSchema("north"), { what: "field peas", distance: "90" });
  granted(await recordNeighbour(db, owner, growOutId, { ...neighbour, distanceMetres: distance }));
  const method = { method: "distance", evidence: "seen" };
  granted(await recordIsolationMethod(db, owner, growOutId, typed(isolationMethodSchema("north"), method)));
  const plot = { newPlot: "The terrace", fromOn: "2025-04-20" };
  granted(await putOnPlot(db, owner, growOutId, typed(plotOfGrowOutSchema("north"), plot)));
  const bags = [40, 30, 25, 10].map((amount) => ({ amount: String(amount), fate: "kept" }));
  const seed = { on: "2025-09-10", bulked: "kept apart", told: "count", each: "grams", seedParents: "4" };
  const harvest = { ...seed, parents: bags, number: "Pea 9" };
  granted(await recordHarvest(db, owner, growOutId, typed(newHarvestSchema("north"), harvest), today));
}

/** A count on a day that had not come, and a plant that two phones marked. */
async function fromTheField(db: Database, growOutId: string, stewardId: string): Promise<void> {
  const [one, other] = [new Phone(growOutId, "Reed", stewardId), new Phone(growOutId, "Sedge", stewardId)];
  await one.sends(db, [one.makes("count", counted(30), { on: "2027-02-01" })]);
  await one.sends(db, [one.makes("mark", keep(aPlant("31")))]);
  await other.sends(db, [other.makes("mark", keep(aPlant("31")))]);
}

/** A harvest of which a bag never came, sent just now: once it was entered and that was taken back it stays set aside. */
export async function harvestThatWaits(db: Database, growOutId: string): Promise<string> {
  const phone = new Phone(growOutId, "Rush");
  const harvestId = uuidv7();
  const body = { harvestId, plant: aPlant("32"), fate: "kept" as const, grams: 12, seeds: null, replaces: null };
  const bag = phone.makes("taken", body);
  const whole = { harvestId, parts: [bag.id, uuidv7()], bulked: "kept apart" as const, note: null };
  const harvest = phone.makes("harvest", whole);
  await phone.sends(db, [bag, harvest]);
  return harvest.id;
}

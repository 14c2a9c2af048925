import { uuidv7 } from "uuidv7";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import type { TableName } from "@/lib/registry/change-set/records";
import { accepted } from "@/lib/science/outcome";
import { granted } from "@/tests/setup/registry";
import { fillLineage } from "./fill-lineage";
import { fillNeighbours } from "./fill-neighbours";
import { fillPhotos } from "./fill-photos";
import { fillPlants } from "./fill-plants";

const owner = ownerHere();
const encoder = new TextEncoder();

export const csv = (files: Readonly<Record<string, string>>) =>
  new Map(Object.entries(files).map(([name, text]) => [name, encoder.encode(text)]));

/** The folder that stands before every further table is filled. */
export const base = csv({
  "stewards.csv": "steward\nHalda Morrow\nOsk Tarn\n",
  "varieties.csv": "variety,crop\nGrey Morrow,oat\nTarn Vetch,bank vetch\n",
  "grow_outs.csv": "grow_out,variety,steward,plot,parents\nK1,Grey Morrow,Osk Tarn,Low strip,M 1\n",
  "lots.csv":
    "lot,variety,holder,kind,from\nM 1,Grey Morrow,Halda Morrow,founder,\nM 3,Grey Morrow,Halda Morrow,founder,\nM 4,Grey Morrow,Halda Morrow,founder,\nM 2,Grey Morrow,Osk Tarn,harvest,K1\n",
  "tests.csv": "test,lot,date,replicate,sown,normal\nP1,M 1,2020-02,1,20,18\n",
});

/** One record in every table that a further file holds, each field filled. */
export async function fillEveryTable(db: Database): Promise<void> {
  const [steward, variety, lot, growOut] = await Promise.all([
    db.read.person.findFirstOrThrow({ where: { name: "Osk Tarn" } }),
    db.read.variety.findFirstOrThrow({ where: { name: "Grey Morrow" } }),
    db.read.lot.findFirstOrThrow({ where: { number: "M 1" } }),
    db.read.growOut.findFirstOrThrow({ where: { name: "K1" } }),
  ]);
  const test = await db.read.germinationTest.findFirstOrThrow();
  const crop = await db.read.crop.findFirstOrThrow({ where: { key: "oat" } });
  const plot = await db.read.plot.findFirstOrThrow();
  const own = await db.read.crop.findFirstOrThrow({ where: { own: true } });
  const stewardId = steward.stewardId;
  const on = { on: "1991~", onFirst: "1991-01-01", onLast: "1991-12-31" };
  const stand = await db.read.growOutPlot.findFirstOrThrow();
  const parent = await db.read.growOutParent.findFirstOrThrow();
  const other = await db.read.lot.findFirstOrThrow({ where: { number: "M 3" } });
  const alikeId = uuidv7();
  const placeId = uuidv7();
  const strainId = uuidv7();
  await perform(db, owner, { action: "record", title: "Everything" }, async (change, tx) => {
    const put = (table: TableName, row: object) => change.create(table, { id: uuidv7(), ...row } as never);
    await put("Setting", { key: "confirmedYears", value: "4" });
    const mill = "mill oat of the ridge";
    await put("Variety", { id: alikeId, name: mill, nameKey: mill, cropId: crop.id });
    await change.update("Crop", own.id, { latinName: "Vicia sp.", cautions: "none known", clonal: true });
    await put("CropOverride", {
      cropId: crop.id,
      field: "plantsMin",
      value: "40",
      reason: "our strip is small",
      source: "Osk",
    });
    await put("TableOverride", {
      table: "oil-content",
      row: "Oat",
      field: "oilPercentHigh",
      value: "9",
      reason: "naked oats",
      source: "the mill",
    });
    await change.update("Variety", variety.id, {
      aim: "broad-and-alive",
      seedCoat: '{"pattern":"eye"}',
      cautions: "dust",
      rights: "old",
      sensitivity: "held",
      plantsWanted: 60,
      seedParentsWanted: 40,
      isolationWantedM: 3.5,
      note: "two\nlines",
    });
    await change.update("Lot", lot.id, {
      yearWords: "about when the mill closed",
      founderLines: "many",
      origin: "found",
      status: "usable",
      statusReason: "looked",
      treatment: "none",
      treatmentSubstance: "-",
      originalSample: true,
      identityGrade: "told by a keeper",
      isolationGrade: "open",
      isolationReasons: "nobody looked",
      donorNumber: "007",
      howSure: "guess",
    });
    const twice = await tx.lot.findFirstOrThrow({ where: { number: "M 4" } });
    await change.update("Lot", twice.id, { sameAsId: other.id });
    await change.update("Steward", stewardId, { placeGrain: "exact" });
    await change.update("GrowOutPlot", stand.id, { fromOn: "2030-04", toOn: "2030-10-12" });
    await change.update("GrowOutParent", parent.id, { share: null, role: "seed parent" });
    await put("GrowOutParent", { growOutId: growOut.id, lotId: other.id, role: "pollen parent" });
    await change.update("GrowOut", growOut.id, {
      purpose: "renew",
      note: "wet",
      plantsPlanned: 120,
      seedParentsPlanned: 60,
      detasselled: 40,
      seedParentsDetasselled: 30,
      neighboursLookedOn: "2030-06-01",
      endedOn: "2030-10-12",
      foreignPollenHow: "kernels of another colour, 6 of 400",
    });
    await change.update("GerminationTest", test.id, {
      basis: "sprouted",
      method: "paper roll",
      temperature: "20",
      preTreatment: "none",
      finalCountDay: 10,
      note: "n",
    });
    const running = uuidv7();
    const set = { on: "2026-11", onFirst: "2026-11-01", onLast: "2026-11-30" };
    await put("GerminationTest", { id: running, name: "P9", nameKey: "p9", lotId: lot.id, ...set });
    await put("TestReplicate", { testId: running, name: "1", sown: 25 });
    const harvestId = uuidv7();
    await put("Harvest", {
      id: harvestId,
      growOutId: growOut.id,
      lotId: lot.id,
      ...on,
      bulked: "equal seeds",
      seedParents: 9,
      grams: 120.5,
      seeds: 480,
      detasselled: 4,
      mouldyShare: 0.05,
      note: "n",
      stewardId,
    });
    await put("Place", {
      id: placeId,
      name: "Top shelf",
      nameKey: "top shelf",
      stewardId,
      kind: "cellar",
      building: "mill",
      temperatureC: 8.5,
      relativeHumidityPercent: 55,
      note: "n",
    });
    await put("Container", {
      code: "J-1",
      lotId: lot.id,
      placeId,
      kind: "jar",
      amount: 12.5,
      unit: "g",
      sealedOn: "2020-11",
      lastOpened: "2021-02-03",
      desiccant: "rice",
      note: "n",
    });
    await change.update("Plot", plot.id, {
      place: "valley",
      latitude: 1.25,
      longitude: -2.5,
      areaM2: 40,
      altitudeM: 300,
      soil: "clay",
      windExposure: "west",
      note: "n",
      placeGrain: "none",
    });
    await put("VarietyName", {
      varietyId: variety.id,
      name: "Mill oat",
      nameKey: "mill oat",
      kind: "local",
      source: "Halda",
      possiblySameAsId: alikeId,
    });
    await put("TypeTrait", { varietyId: variety.id, trait: "grain", allowed: "grey", offType: "white", part: "seed" });
    await put("Strain", {
      id: strainId,
      varietyId: variety.id,
      name: "Tarn's",
      nameKey: "tarn's",
      stewardId,
      place: "p",
      keptFrom: "1980",
      keptTo: "1999",
      difference: "taller",
      relation: "same",
      note: "n",
    });
    await change.update("Lot", lot.id, { strainId });
    await put("Story", {
      varietyId: variety.id,
      lotId: lot.id,
      growOutId: growOut.id,
      words: 'he said "keep it", and',
      teller: "Osk",
      stewardId,
      toldOn: "1999",
      about: "195X",
      aboutFirst: "1950-01-01",
      aboutLast: "1959-12-31",
      consent: "circle",
    });
    await put("Observation", {
      varietyId: variety.id,
      lotId: lot.id,
      growOutId: growOut.id,
      ...on,
      words: "stood the gale",
      value: 1.5,
      unit: "m",
      howSure: "first hand",
      stewardId,
    });
    await put("LedgerEntry", {
      lotId: lot.id,
      ...on,
      kind: "received",
      amount: 3,
      unit: "ears",
      how: "counted",
      other: "Osk Tarn",
      notes: "n",
    });
    await put("SeedWeighing", { lotId: lot.id, on: "2020", seeds: 100, grams: 3.4, note: "n" });
    await put("MoistureReading", {
      lotId: lot.id,
      ...on,
      percent: 9.5,
      relativeHumidityPercent: 40,
      method: "card",
      temperatureC: 18,
      note: "n",
    });
    await put("Drying", {
      lotId: lot.id,
      ...on,
      startGrams: 200,
      startPercent: 12,
      targetPercent: 6,
      endGrams: 187.2,
      days: 9,
      note: "n",
    });
    await put("LotMaking", { lotId: lot.id, kind: "split", ...on, reason: "r", stewardId });
    await put("StageCount", {
      growOutId: growOut.id,
      stage: "thinned",
      plants: 40,
      males: 3,
      ...on,
      thinnedBy: "random",
      stewardId,
      note: "n",
    });
    await put("RoguePass", {
      growOutId: growOut.id,
      ...on,
      stage: "leaf",
      timing: "before",
      looked: 40,
      pulled: 0,
      reason: "r",
      left: 40,
      stewardId,
      note: "n",
    });
    await put("FloweringNote", { growOutId: growOut.id, organ: "pollen", moment: "half", ...on, stewardId, note: "n" });
    await fillNeighbours(put, {
      varietyId: variety.id,
      cropId: crop.id,
      growOutId: growOut.id,
      plotId: plot.id,
      stewardId,
    });
    const transferId = uuidv7();
    await put("Transfer", {
      id: transferId,
      kind: "loan",
      lotId: lot.id,
      newLotId: lot.id,
      fromStewardId: stewardId,
      toStewardId: stewardId,
      toWords: "w",
      ...on,
      amount: 2,
      unit: "packets",
      purpose: "p",
      conditions: "c",
      told: "t",
      replyDue: "2030",
      note: "n",
    });
    await put("Promise", {
      transferId,
      varietyId: variety.id,
      lotId: lot.id,
      stewardId,
      words: "will grow 100",
      due: "2029",
      keptOn: "2029-10",
    });
    await put("HolderConfirmation", {
      varietyId: variety.id,
      stewardId,
      lotId: lot.id,
      ...on,
      still: "yes",
      grams: 5,
      note: "n",
    });
    await put("Warning", {
      varietyId: variety.id,
      lotId: lot.id,
      kind: "cross",
      reason: "yellow grain",
      on: "2021",
      stewardId,
      closedOn: "2022",
      closedHow: "rogued",
    });
    await fillLineage(put, { lotId: lot.id, otherId: other.id, stewardId });
    await fillPlants(put, { varietyId: variety.id, cropId: crop.id, growOutId: growOut.id, stewardId });
    const plant = await change.tx.plant.findFirstOrThrow({ where: { name: "12 (2)" } });
    const like = await change.tx.plant.findFirstOrThrow({ where: { name: "13" } });
    await put("Question", {
      kind: "balance",
      sentence: "off by 12 g: weigh in?",
      varietyId: variety.id,
      lotId: lot.id,
      growOutId: growOut.id,
      testId: test.id,
      otherLotId: other.id,
      plantId: plant.id,
      otherPlantId: like.id,
      raisedAt: "2021-01-01T00:00:00Z",
      answer: "weighed",
      answeredAt: "2021-02-01T00:00:00Z",
    });
    await fillPhotos(change.tx, put);
    const gave = { harvestId, grams: 30.5, seeds: 122, share: 0.25 };
    await put("HarvestSeedParent", { ...gave, plantId: plant.id });
    await put("HarvestSeedParent", { harvestId, lost: "eaten" });
    return accepted(null);
  }).then(granted);
}

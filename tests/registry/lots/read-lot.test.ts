import { beforeAll, beforeEach, expect, test } from "vitest";
import type { Database } from "@/lib/db";
import { figuresOfVariety } from "@/lib/registry/figures/read-figures";
import { readLot } from "@/lib/registry/lots/read-lot";
import { defaultSettings } from "@/lib/schemas/settings";
import { emptyRegistry } from "../../setup/registry";
import { aLot, anEntry, aSteward, aTest, aVariety } from "./lots-in-tests";
import { type ManyLots, manyLots } from "./many-lots";

const now = { settings: defaultSettings, today: "2026-11-24" };

async function read(db: Database, lotId: string, plants: number | null = null) {
  const lot = await readLot(db, lotId, { ...now, plants });
  if (!lot) throw new Error("no such lot");
  return lot;
}

const statements: string[] = [];
let many: Database;
let made: ManyLots;

beforeAll(async () => {
  many = await emptyRegistry({ onStatement: (sql) => statements.push(sql) });
  made = await manyLots(many, 2000);
});

let db: Database;
let varietyId: string;

beforeEach(async () => {
  db = await emptyRegistry();
  varietyId = await aVariety(db, "Hamble Long", "bean-broad", { plantsWanted: 20 });
});

test("the jar answers what is left, what lives, what may be given and what to sow", async () => {
  const lotId = await aLot(db, varietyId, { number: "Ham 3", year: "2024", thousandSeedGrams: 500 });
  await anEntry(db, lotId, "harvested", 220, "2024-10-01");
  await anEntry(db, lotId, "given", 20, "2025-10-01");
  await aTest(db, lotId, "T1", "2025-02-01", 20, 18);
  const lot = await read(db, lotId);
  // 200 g at 500 g a thousand: 400 seeds; 18 of 20 (exact 95 % 68.3 to 98.8): 273 to 395 alive
  expect(lot.figures?.gramsOnHand).toBe(200);
  expect(lot.seeds?.value).toBe(400);
  expect([Math.round(lot.live?.low ?? 0), Math.round(lot.live?.high ?? 0)]).toEqual([273, 395]);
  // 20 plants from 18 of 20 at an emergence of 0.8: 34 seeds (reference table), 17 g; reserve 34 + 100 + 34 + 50 = 218
  expect(lot.sow).toMatchObject({ plants: 20, from: "variety", sowing: { seeds: 34 }, grams: 17 });
  expect(lot.reserve.reserve?.seeds).toBe(218);
  expect(lot.give).toMatchObject({ answer: "yes", keptBack: 218, onlyPlace: true });
  expect(lot.give.free?.value).toBe(182);
  expect("why" in lot.keeping).toBe(false);
});

test("another number of plants can be asked for", async () => {
  const lotId = await aLot(db, varietyId, { number: "Ham 3", thousandSeedGrams: 500 });
  await aTest(db, lotId, "T1", "2025-02-01", 10, 9);
  const { sow } = await read(db, lotId, 60);
  expect([sow?.from, sow?.plants]).toEqual(["asked", 60]);
});

test("a lot of which nothing is known says so everywhere", async () => {
  const bare = await aVariety(db, "Ash Vetch", "bean-broad");
  const lotId = await aLot(db, bare, { number: "Ash 1" });
  const lot = await read(db, lotId);
  expect(lot).toMatchObject({ seeds: null, live: null, entries: [], tests: [], kin: [], containers: [], notes: [] });
  expect(lot.give).toMatchObject({ answer: "cannot tell", why: "amount not known", free: null });
  expect(lot.keeping).toEqual({ why: "year not known" });
  expect(lot.sow).toMatchObject({ from: "crop", sowing: null });
});

test("parents, children and lots of the same harvest are told both ways, with what failed", async () => {
  const founder = await aLot(db, varietyId, { number: "Ham 1", year: "2018" });
  await db.write.growOut.create({ data: { id: "g1", name: "G1", nameKey: "g1", varietyId } });
  await db.write.growOut.create({ data: { id: "g2", name: "G2", nameKey: "g2", varietyId, outcome: "slugs" } });
  await db.write.growOutParent.create({ data: { id: "p1", growOutId: "g1", lotId: founder, share: 1 } });
  const harvest = await aLot(db, varietyId, { number: "Ham 2", kind: "harvest", growOutId: "g1", year: "2019" });
  await aLot(db, varietyId, { number: "Ham 2b", kind: "harvest", growOutId: "g1", year: "2019" });
  await db.write.growOutParent.create({ data: { id: "p2", growOutId: "g2", lotId: harvest, share: 1 } });
  const split = await aLot(db, varietyId, { number: "Ham 3", kind: "split" });
  await db.write.lotParent.create({ data: { id: "l1", lotId: split, parentLotId: harvest, share: 1 } });
  const kin = (await read(db, harvest)).kin.map((each) => [each.kinship, each.number, each.growOut, each.outcome]);
  expect(kin).toEqual(
    expect.arrayContaining([
      ["sown for it", "Ham 1", "G1", null],
      ["same harvest", "Ham 2b", "G1", null],
      ["grown from it", null, "G2", "slugs"],
      ["split off it", "Ham 3", null, null],
    ]),
  );
  expect(kin).toHaveLength(4);
  expect((await read(db, split)).kin).toMatchObject([{ kinship: "split from", number: "Ham 2", share: 1 }]);
});

test("notes of all kinds come with what they say", async () => {
  const lotId = await aLot(db, varietyId, { number: "Ham 3" });
  const stewardId = await aSteward(db, "Oda Fenlight");
  await db.write.story.create({ data: { id: "n1", lotId, words: "From the well garden.", teller: "Aunt Sela" } });
  await db.write.seedWeighing.create({ data: { id: "n2", lotId, seeds: 100, grams: 50, on: "2026-01" } });
  await db.write.warning.create({ data: { id: "n3", lotId, reason: "bitter fruit", on: "2026-02-01", stewardId } });
  const { notes, give } = await read(db, lotId);
  expect(notes.map(({ what, words, who, value, second }) => [what, words, who, value, second])).toEqual([
    ["story", "From the well garden.", "Aunt Sela", null, null],
    ["weighing", null, null, 100, 50],
    ["warning", "bitter fruit", "Oda Fenlight", null, null],
  ]);
  expect(give.why).toBe("warning");
});

test("the crop's own values of the steward go before the list's", async () => {
  const lotId = await aLot(db, varietyId, { number: "Ham 3" });
  const { cropId } = await db.read.variety.findUniqueOrThrow({ where: { id: varietyId } });
  const own = { cropId, reason: "our own shelf" };
  await db.write.cropOverride.create({ data: { id: "o1", field: "seedLifeYearsMax", value: "9", ...own } });
  await db.write.cropOverride.create({ data: { id: "o2", field: "seedsPerGramMin", value: "0.5", ...own } });
  const { crop } = (await read(db, lotId)).lot;
  expect(crop).toMatchObject({ seedLifeYearsMax: 9, seedsPerGramMin: 0.5, ownSeedLife: true });
});

test("there is no page of a lot that does not exist", async () => {
  expect(await readLot(db, "nowhere", now)).toBeNull();
});

test("at 2,000 lots one lot takes four statements where the figures of its crop are at hand", async () => {
  const [lotId = ""] = made.lotIds.slice(-1);
  const last = made.varietyIds[(made.lotIds.length - 1) % made.varietyIds.length] ?? "";
  await figuresOfVariety(many, last);
  statements.length = 0;
  const lot = await read(many, lotId);
  expect(lot.kin.length).toBeGreaterThan(0);
  expect(statements.length).toBeLessThanOrEqual(4);
});

import { beforeAll, expect, test } from "vitest";
import type { Database } from "@/lib/db";
import { figuresOfAll } from "@/lib/registry/figures/read-figures";
import { listLots, lotsAskedFor } from "@/lib/registry/lots/list-lots";
import { LotListQuerySchema } from "@/lib/schemas/lots/list-query";
import { emptyRegistry } from "../../setup/registry";
import { aLot, anEntry, aSteward, aTest, aVariety } from "./lots-in-tests";
import { manyLots } from "./many-lots";

const lines = { renewalPlan: 0.7, renewalUrgent: 0.5 };
const ask = (query: Record<string, string> = {}) => LotListQuerySchema.parse(query);

const statements: string[] = [];
let many: Database;

beforeAll(async () => {
  many = await emptyRegistry({ onStatement: (sql) => statements.push(sql) });
  await manyLots(many, 2000);
});

test("a row says what is left of a lot and how it tests", async () => {
  const db = await emptyRegistry();
  const holderId = await aSteward(db, "Oda Fenlight");
  const lotId = await aLot(db, await aVariety(db), { number: "Ham 3", year: "2019", holderId, thousandSeedGrams: 500 });
  await anEntry(db, lotId, "harvested", 220, "2019-10-01");
  await anEntry(db, lotId, "given", 20, "2020-10-01");
  await aTest(db, lotId, "T1", "2025-02-01", 20, 18);
  const { rows, found, seed } = await listLots(db, ask(), lines);
  expect([found, seed]).toEqual([1, { some: 1, none: 0, unknown: 0 }]);
  expect(rows[0]).toMatchObject({
    number: "Ham 3",
    variety: "Hamble Long",
    crop: "Broad bean, faba",
    holder: "Oda Fenlight",
    grams: 200,
    lastTest: { test: "T1", sown: 20, normal: 18, germination: 0.9 },
  });
  // 200 g at 500 g a thousand are 400 seeds; 18 of 20 is 68.3 to 98.8 % (exact 95 %): 273 to 395 living seeds
  expect(rows[0]?.live?.value).toBeCloseTo(360, 9);
  expect(rows[0]?.live?.low).toBeCloseTo(273.2, 0);
  expect(rows[0]?.live?.high).toBeCloseTo(395.1, 0);
});

test("a lot of which nothing is known stands in the list with nothing made up", async () => {
  const db = await emptyRegistry();
  await aLot(db, await aVariety(db), { number: "Ham 4" });
  const { rows, seed } = await listLots(db, ask(), lines);
  expect(rows[0]).toMatchObject({ grams: null, live: null, lastTest: null, holder: null, year: null, places: [] });
  expect(seed.unknown).toBe(1);
});

test("at 2,000 lots the list reads three statements beside the figures, and none anew where nothing changed", async () => {
  await figuresOfAll(many);
  statements.length = 0;
  await listLots(many, ask(), lines);
  expect(statements.length).toBeLessThanOrEqual(4);
  statements.length = 0;
  const list = await listLots(many, ask({ filter: "variety 1", sort: "-grams", page: "2" }), lines);
  expect(list.all).toBe(2000);
  expect(list.rows.length).toBeGreaterThan(0);
  expect(statements.length).toBeLessThanOrEqual(2);
});

test("pages part the list without a lot lost or shown twice", async () => {
  const first = await listLots(many, ask(), lines);
  const numbers = new Set<string>();
  for (let page = 1; page <= first.pages; page += 1) {
    const { rows } = await listLots(many, ask({ page: String(page) }), lines);
    for (const row of rows) numbers.add(row.number);
  }
  expect([first.pages, numbers.size]).toEqual([34, 2000]);
  const beyond = await listLots(many, ask({ page: "99" }), lines);
  expect(beyond.page).toBe(34);
});

test("an export holds exactly what is filtered, in the same order, on all pages", async () => {
  const query = ask({ crop: "pea", sort: "-number" });
  const all = await lotsAskedFor(many, query, lines);
  const { rows, found } = await listLots(many, query, lines);
  expect(all.length).toBe(found);
  expect(all.slice(0, rows.length).map((row) => row.number)).toEqual(rows.map((row) => row.number));
  expect(new Set(all.map((row) => row.cropKey))).toEqual(new Set(["pea"]));
});

test("filters offer what there is, with how many lots each", async () => {
  const { choices } = await listLots(many, ask(), lines);
  expect(choices.crop.map((choice) => choice.lots)).toEqual([400, 400, 400, 400, 400]);
  expect(choices.holder[0]).toMatchObject({ words: "Steward 0", lots: 280 });
});

test("places, other names and a crop's own seeds a gram stand in the row", async () => {
  const db = await emptyRegistry();
  const varietyId = await aVariety(db);
  const { cropId } = await db.read.variety.findUniqueOrThrow({ where: { id: varietyId } });
  const lotId = await aLot(db, varietyId, { number: "Ham 3" });
  await anEntry(db, lotId, "weighed", 100, "2020-10-01");
  await aTest(db, lotId, "T1", "2025-02-01", 10, 10);
  await db.write.varietyName.create({ data: { id: "n1", varietyId, name: "Longpod", nameKey: "longpod" } });
  await db.write.place.create({ data: { id: "p1", name: "Loft", nameKey: "loft" } });
  await db.write.container.create({ data: { id: "c1", code: "c1", lotId, placeId: "p1" } });
  await db.write.container.create({ data: { id: "c2", code: "c2", lotId, placeId: "p1" } });
  const own = { cropId, reason: "weighed our own" };
  await db.write.cropOverride.create({ data: { id: "o1", field: "seedsPerGramMin", value: "0.6", ...own } });
  await db.write.cropOverride.create({ data: { id: "o2", field: "seedsPerGramMax", value: "0.9", ...own } });
  const { rows } = await listLots(db, ask({ filter: "longp" }), lines);
  expect(rows[0]).toMatchObject({ otherNames: ["Longpod"], places: ["Loft"] });
  // 100 g at 0.6 to 0.9 seeds a gram are 60 to 90 seeds; 10 of 10 is 69.15 to 100 % (exact 95 %): 41.5 to 90
  expect(rows[0]?.live?.low).toBeCloseTo(41.49, 1);
  expect(rows[0]?.live?.high).toBeCloseTo(90, 9);
});

test("a selfer's diversity has no figure until its founder is said to be one line or many", async () => {
  const db = await emptyRegistry();
  const varietyId = await aVariety(db, "Dell Pod", "pea");
  await aLot(db, varietyId, { number: "a" });
  await aLot(db, varietyId, { number: "b", founderLines: "one" });
  await aLot(db, varietyId, { number: "c", founderLines: "many" });
  await aLot(db, await aVariety(db, "Dell Bulb", "garlic"), { number: "d" });
  const { rows } = await listLots(db, ask({ sort: "number" }), lines);
  expect(rows.map((row) => row.standing)).toEqual(["lines not known", "uniform", "counted", "clonal"]);
});

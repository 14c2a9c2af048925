import { uuidv7 } from "uuidv7";
import { describe, expect, it } from "vitest";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import type { NewRowOf, TableName } from "@/lib/registry/change-set/records";
import { seasonProgress } from "@/lib/registry/season/progress";
import { readSeasonRecords } from "@/lib/registry/season/read-season-records";
import { byPlace, waitingByVariety, waitingItems } from "@/lib/registry/season/waiting";
import { confirmHolder } from "@/lib/registry/varieties/confirm-holder";
import { defaultSettings } from "@/lib/schemas/settings";
import { accepted } from "@/lib/science/outcome";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner, withLot, withSteward, withVariety } from "../varieties/with-variety";

const today = "2026-03-10";
const day = (on: string) => ({ on, onFirst: on, onLast: on });

async function entered<T extends TableName>(
  db: Database,
  table: T,
  ...rows: Omit<NewRowOf<T>, "id">[]
): Promise<string[]> {
  const whole = rows.map((row) => ({ ...row, id: uuidv7() })) as unknown as NewRowOf<T>[];
  granted(
    await perform(db, owner, { action: "record", title: `${table} entered` }, async (change) => {
      await change.createAll(table, whole);
      change.touchAll();
      return accepted(null);
    }),
  );
  return (whole as unknown as { id: string }[]).map((row) => row.id);
}

/** One pea with a lot of 2024: 80 g harvested, 30 given away by mistake and taken back, tested in 2025 with 12 of 40. */
async function circle() {
  const db = await emptyRegistry();
  const varietyId = await withVariety(db);
  const stewardId = await withSteward(db);
  const year = { year: "2024", yearFirst: "2024-01-01", yearLast: "2024-12-31" };
  const lotId = await withLot(db, varietyId, "Quern 1", { holderId: stewardId, ...year });
  const entry = { lotId, amount: 80, unit: "g" };
  await entered(db, "LedgerEntry", { ...entry, kind: "harvested", ...day("2024-09-01") });
  const [mistake] = await entered(db, "LedgerEntry", { ...entry, kind: "given", amount: 30, ...day("2025-12-24") });
  await entered(db, "LedgerEntry", {
    ...entry,
    kind: "given",
    amount: 30,
    replacesId: mistake,
    takenBack: true,
    ...day("2025-12-24"),
  });
  const [testId] = await entered(db, "GerminationTest", {
    lotId,
    name: "T1",
    nameKey: "t1",
    finalCountDay: 10,
    ...day("2025-02-01"),
  });
  const [replicateId] = await entered(db, "TestReplicate", { testId: testId as string, name: "1", sown: 40 });
  await entered(db, "TestCount", { replicateId: replicateId as string, day: 10, normal: 12 });
  return { db, varietyId, stewardId, lotId };
}
const read = async (db: Database) => readSeasonRecords(db, defaultSettings, today);

describe("what the season reads", () => {
  it("counts ledger entries that stand, and takes the last day on which the seed was in hand", async () => {
    const { db } = await circle();
    expect((await read(db)).lots[0]).toMatchObject({ entries: 1, gramsOnHand: 80, lastInHand: "2025-02-01" });
  });

  it("finds the holder confirmed by the test, and no more after three years", async () => {
    const { db, varietyId } = await circle();
    expect((await read(db)).holders.get(varietyId)).toMatchObject([{ confirmed: true, last: { how: "seed in hand" } }]);
    const later = await readSeasonRecords(db, defaultSettings, "2028-02-02");
    expect(later.holders.get(varietyId)?.[0]?.why).toBe("heard too long ago");
  });

  it("knows running tests: those without counts and those before their last day with seeds left", async () => {
    const { db, lotId } = await circle();
    expect((await read(db)).tests).toEqual([]);
    const [open] = await entered(db, "GerminationTest", {
      lotId,
      name: "T2",
      nameKey: "t2",
      finalCountDay: 14,
      ...day("2026-02-20"),
    });
    expect((await read(db)).tests).toMatchObject([{ name: "T2", counts: 0, lastCountDay: null }]);
    const [replicateId] = await entered(db, "TestReplicate", { testId: open as string, name: "1", sown: 20 });
    await entered(db, "TestCount", { replicateId: replicateId as string, day: 7, normal: 12 });
    expect((await read(db)).tests).toMatchObject([{ counts: 1, lastCountDay: 7 }]);
    await entered(db, "TestCount", { replicateId: replicateId as string, day: 9, normal: 6, dead: 2 });
    expect((await read(db)).tests).toEqual([]);
  });

  it("takes the steward's own value for the usual life of the seed", async () => {
    const { db, varietyId } = await circle();
    const crop = await db.read.crop.findUniqueOrThrow({ where: { key: "pea" } });
    await entered(db, "CropOverride", {
      cropId: crop.id,
      field: "seedLifeYearsMax",
      value: "1",
      reason: "damp cellar",
    });
    const records = await read(db);
    expect(records.varieties.get(varietyId)?.crop.seedLifeYearsMax).toBe(1);
    expect(records.holders.get(varietyId)?.[0]?.why).toBe("seed past its usual life");
  });

  it("counts containers in one building as one place", async () => {
    const { db, varietyId, lotId } = await circle();
    const place = (name: string, building: string | null) => ({ name, nameKey: name, building });
    const places = await entered(
      db,
      "Place",
      place("shelf", "Mill house"),
      place("loft", "mill house"),
      place("barn", null),
    );
    await entered(db, "Container", ...places.map((placeId, index) => ({ code: `C${index}`, lotId, placeId })));
    expect((await read(db)).holders.get(varietyId)?.[0]?.places).toBe(2);
  });

  it("sees questions without an answer and warnings that are not closed", async () => {
    const { db, lotId } = await circle();
    const question = { kind: "tag", lotId, raisedAt: "2026-01-01T00:00:00.000Z" };
    await entered(
      db,
      "Question",
      { ...question, sentence: "Whose tag?" },
      { ...question, sentence: "Old", answeredAt: "2026-01-02" },
    );
    await entered(db, "Warning", { lotId, reason: "weevils", on: "2026-01-03" });
    expect((await read(db)).matters.map((each) => each.sentence)).toEqual(["Whose tag?", "weevils"]);
  });
});

describe("what waits", () => {
  it("is sorted by urgency, grouped by place, and counted by variety", async () => {
    const { db, varietyId } = await circle();
    const items = waitingItems(await read(db));
    expect(items.map((item) => item.rule)).toEqual(["germination-below-line", "one-place-only"]);
    expect(byPlace(items).field).toHaveLength(1);
    expect(byPlace(items).shed).toEqual([]);
    expect(waitingByVariety(items).get(varietyId)).toBe(2);
  });

  it("is nothing on an empty registry", async () => {
    expect(waitingItems(await read(await emptyRegistry()))).toEqual([]);
  });
});

describe("the progress of the season", () => {
  it("says how many are done, how many there are, and which are left", async () => {
    const { db, varietyId, stewardId, lotId } = await circle();
    const year = { year: "2020", yearFirst: "2020-01-01", yearLast: "2020-12-31" };
    const untested = await withLot(db, varietyId, "Quern 2", { holderId: stewardId, ...year });
    const progress = Object.fromEntries(seasonProgress(await read(db)).map((each) => [each.key, each]));
    expect(progress.tests).toMatchObject({ done: 1, of: 2, left: [untested], overdue: [untested] });
    expect(progress.balances).toMatchObject({ done: 1, of: 2, left: [untested] });
    expect(progress.places).toMatchObject({ done: 0, of: 1, left: [varietyId] });
    expect(progress.holders).toMatchObject({ done: 1, of: 1, left: [] });
    expect(lotId).not.toBe(untested);
  });

  it("takes a clear word for a holder", async () => {
    const { db, varietyId } = await circle();
    granted(await confirmHolder(db, owner, varietyId, { steward: "Aldis Thornwick", still: "no" }, today));
    const holders = seasonProgress(await read(db)).find((each) => each.key === "holders");
    expect(holders).toMatchObject({ done: 0, of: 1 });
  });
});

import { beforeAll, describe, expect, it } from "vitest";
import { type Actor, ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { listCrops } from "@/lib/registry/crops/list-crops";
import { readCrop } from "@/lib/registry/crops/read-crop";
import { growOutsNow } from "@/lib/registry/grow-outs/grow-outs-now";
import { listGrowOuts } from "@/lib/registry/grow-outs/list-grow-outs";
import { readField } from "@/lib/registry/grow-outs/read-field";
import { readGrowOut } from "@/lib/registry/grow-outs/read-grow-out";
import { readPlanGround } from "@/lib/registry/grow-outs/read-plan-ground";
import { readSowing } from "@/lib/registry/grow-outs/read-sowing";
import { listChangeSets } from "@/lib/registry/history/list-change-sets";
import { readChangeSet } from "@/lib/registry/history/read-change-set";
import { recordHistory } from "@/lib/registry/history/record-history";
import { namesForForms } from "@/lib/registry/lots/names-for-forms";
import { readBlendGround } from "@/lib/registry/lots/read-blend-ground";
import { readBlendSubject } from "@/lib/registry/lots/read-blend-subject";
import { readSplitGround } from "@/lib/registry/lots/read-split-ground";
import { closedHere, closedOfLots } from "@/lib/registry/ownership/offered-here";
import { find } from "@/lib/registry/search/find";
import { readSeasonRecords } from "@/lib/registry/season/read-season-records";
import { byPlace, waitingItems } from "@/lib/registry/season/waiting";
import { readSettings } from "@/lib/registry/settings/read-settings";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { correctVariety } from "@/lib/registry/varieties/correct-variety";
import { listVarieties } from "@/lib/registry/varieties/list-varieties";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { defaultSettings } from "@/lib/schemas/settings";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { type ManyLots, manyLots } from "../lots/many-lots";

const today = "2026-03-10";
const settings = defaultSettings;
const sent: string[] = [];
let db: Database;
let many: ManyLots;

beforeAll(async () => {
  db = await emptyRegistry({ onStatement: (sql) => sent.push(sql) });
  many = await manyLots(db, 2000);
  await readSeasonRecords(db, settings, today);
  await find(db, "variety");
});

/** How many statements a page's reading sends, with the settings that every page reads. */
async function statements(read: () => Promise<unknown>): Promise<number> {
  sent.length = 0;
  await readSettings(db.read);
  await read();
  return sent.length;
}

describe("at 2,000 lots a page asks the database at most a dozen times:", () => {
  it("the season", async () => {
    const items = waitingItems(await readSeasonRecords(db, settings, today));
    expect(items.length).toBeGreaterThan(100);
    expect(byPlace(items).shed.length + byPlace(items).desk.length + byPlace(items).field.length).toBe(items.length);
    expect(await statements(() => readSeasonRecords(db, settings, today))).toBeLessThanOrEqual(4);
  });

  it("the season after a change", async () => {
    const id = many.varietyIds[0] as string;
    granted(await correctVariety(db, ownerHere(), id, { note: "climbs" }));
    // The settings, two looks for what changed, the season's own rows, and the records of the one crop whose figures are worked out anew.
    const own = await statements(() => readSeasonRecords(db, settings, today));
    expect(own).toBeLessThanOrEqual(5);
    expect(await statements(() => readSeasonRecords(db, settings, today))).toBeLessThanOrEqual(4);
  });

  it("the list of varieties", async () => {
    expect(await listVarieties(db, settings, today)).toHaveLength(40);
    expect(await statements(() => listVarieties(db, settings, today))).toBeLessThanOrEqual(12);
  });

  it("one variety with its history", async () => {
    const id = many.varietyIds[3] as string;
    expect((await readVariety(db, id, settings, today))?.lots).toHaveLength(50);
    const page = async () => {
      await readVariety(db, id, settings, today);
      await recordHistory(db, [id]);
    };
    expect(await statements(page)).toBeLessThanOrEqual(12);
  });

  it("the list of grow-outs and one of them with its history", async () => {
    const [first] = await listGrowOuts(db);
    expect(await statements(() => listGrowOuts(db))).toBeLessThanOrEqual(12);
    const page = async () => {
      const read = await readGrowOut(db, first?.id ?? "");
      if (read) await readField(db, read);
      await recordHistory(db, [first?.id ?? ""]);
    };
    expect(await statements(page)).toBeLessThanOrEqual(12);
  });

  it("what is planned and stands, a grow-out after a change, the ground of a plan and of a sowing", async () => {
    const [first] = await listGrowOuts(db);
    const id = first?.id ?? "";
    const question = { settings, today };
    expect((await readPlanGround(db, many.varietyIds[3] as string, question))?.lots).toHaveLength(50);
    expect((await readSowing(db, id, question))?.growOut.id).toBe(id);
    const list = async () => {
      await listGrowOuts(db);
      await growOutsNow(db, today);
    };
    expect(await statements(list)).toBeLessThanOrEqual(12);
    const page = async () => {
      const read = await readGrowOut(db, id);
      if (read) await readField(db, read);
      await recordHistory(db, [id]);
    };
    granted(await correctVariety(db, ownerHere(), many.varietyIds[1] as string, { note: "a bed of its own" }));
    expect(await statements(page)).toBeLessThanOrEqual(12);
    granted(await correctVariety(db, ownerHere(), many.varietyIds[3] as string, { note: "late" }));
    expect(await statements(() => readPlanGround(db, many.varietyIds[3] as string, question))).toBeLessThanOrEqual(12);
    expect(await statements(() => readSowing(db, id, question))).toBeLessThanOrEqual(12);
  });

  it("the ground of a blend and of a split, after a change", async () => {
    const varietyId = many.varietyIds[3] as string;
    const subject = await readBlendSubject(db, { lots: [], varietyId });
    const blend = async () => {
      const found = await readBlendSubject(db, { lots: [], varietyId });
      await readBlendGround(db, { varietyId, cropId: found?.cropId ?? "", asked: [] });
      await namesForForms(db);
    };
    const split = async () => {
      await readSplitGround(db, subject?.head.id ?? "", { settings, today });
      await namesForForms(db);
    };
    granted(await correctVariety(db, ownerHere(), varietyId, { cautions: "raise no dust" }));
    expect(await statements(blend)).toBeLessThanOrEqual(12);
    granted(await correctVariety(db, ownerHere(), varietyId, { isolationWantedM: "40" }));
    expect(await statements(split)).toBeLessThanOrEqual(12);
  });

  it("stewards, crops and one crop", async () => {
    expect(await statements(() => listStewards(db))).toBeLessThanOrEqual(12);
    expect(await statements(() => listCrops(db))).toBeLessThanOrEqual(12);
    expect(await statements(() => readCrop(db, "pea"))).toBeLessThanOrEqual(12);
  });

  it("the history, one change set and the history of a record", async () => {
    expect(await statements(() => listChangeSets(db))).toBeLessThanOrEqual(12);
    expect(await statements(() => readChangeSet(db, "1"))).toBeLessThanOrEqual(12);
    expect(await statements(() => recordHistory(db, many.varietyIds.slice(0, 1)))).toBeLessThanOrEqual(12);
  });

  it("the search", async () => {
    expect((await find(db, "variety 7")).found[0]?.title).toBe("Variety 7");
    expect(await statements(() => find(db, "variety 7"))).toBeLessThanOrEqual(2);
  });

  it("what is offered of another's variety with fifty lots, and of a list of as many", async () => {
    const reed: Actor = { ...ownerHere(), role: "steward", stewardId: "reed", name: "Reed" };
    const varietyId = many.varietyIds[3] as string;
    const lots = await db.read.lot.findMany({ where: { varietyId }, select: { id: true } });
    expect(lots).toHaveLength(50);
    const ids = lots.map(({ id }) => id);
    const closed = await closedHere(db, reed, "/varieties/[id]", varietyId);
    expect(closed?.named.flatMap((each) => each.ids)).toEqual(expect.arrayContaining([varietyId, ...ids]));
    expect(await statements(() => closedHere(db, reed, "/varieties/[id]", varietyId))).toBeLessThanOrEqual(8);
    expect(await statements(() => closedOfLots(db, reed, ids))).toBeLessThanOrEqual(3);
  });
});

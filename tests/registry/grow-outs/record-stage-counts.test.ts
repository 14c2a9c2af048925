import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { figuresOfAll } from "@/lib/registry/figures/read-figures";
import { correctStageCount, recordStageCounts } from "@/lib/registry/grow-outs/record-stage-counts";
import { takeBackFieldRecord } from "@/lib/registry/grow-outs/take-back-field-record";
import { stageCountCorrectionSchema, stageCountsSchema } from "@/lib/schemas/grow-outs/field-counts";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, aSteward } from "../lots/lots-in-tests";
import { aGrowOut, dated, numbersOf } from "./a-grow-out";

const owner = ownerHere();
const today = "2026-09-01";

async function record(db: Database, growOutId: string, typed: Record<string, string>) {
  const input = parseForm(stageCountsSchema("north"), typed);
  return input.ok ? recordStageCounts(db, owner, growOutId, input.value, today) : input;
}

async function correct(db: Database, id: string, typed: Record<string, string>) {
  const input = parseForm(stageCountCorrectionSchema("north"), { why: "miscounted", ...typed });
  return input.ok ? correctStageCount(db, owner, id, input.value, today) : input;
}

const refusals = async (outcome: ReturnType<typeof record>) => {
  const answer = await outcome;
  return answer.ok ? [] : answer.refusals.map(({ code, path }) => [code, path.join(".")]);
};

onEveryEngine("counts by stage", (fresh) => {
  test("are recorded several at a time, each with its day in the field, and set the plants standing", async () => {
    const db = await fresh();
    const id = await aGrowOut(db, { seedsSown: 200 });
    const by = await aSteward(db, "Merrit Lorn");
    const typed = {
      "up.plants": "150",
      "up.on": "2026-05-20",
      "thinned.plants": "90",
      "thinned.on": "2026-06",
      "thinned.thinnedBy": "vigour",
      "standing.plants": "84",
      "standing.on": "2026-06-20",
      "standing.note": "after the hail",
      by,
    };
    const { value } = granted(await record(db, id, typed));
    expect(value.warnings).toEqual([]);
    expect(await db.read.stageCount.findMany({ where: { growOutId: id }, orderBy: { id: "asc" } })).toMatchObject([
      { stage: "up", plants: 150, ...dated("2026-05-20"), stewardId: by, thinnedBy: null },
      { stage: "thinned", plants: 90, ...dated("2026-06"), thinnedBy: "vigour" },
      { stage: "standing", plants: 84, note: "after the hail", stewardId: by },
    ]);
    expect(await numbersOf(db, id)).toMatchObject({ plantsStanding: 84, malesStanding: null, seedsSown: 200 });
  });

  test("move the effective size of the lot that came of it", async () => {
    const db = await fresh();
    const id = await aGrowOut(db, { plantsStanding: 50, seedParents: 40, seedShares: "equal" });
    const { varietyId } = await db.read.growOut.findUniqueOrThrow({ where: { id } });
    const sown = await aLot(db, varietyId, { number: "Sallow 1" });
    await db.write.growOutParent.create({ data: { id: "p", growOutId: id, lotId: sown, share: 1 } });
    const lot = await aLot(db, varietyId, { number: "Sallow 2", kind: "harvest", growOutId: id });
    // 4·40·50/(50 + 120) and, once 80 are counted, 4·40·80/(80 + 120)
    expect((await figuresOfAll(db)).get(lot)?.effectiveSize).toBeCloseTo(8000 / 170, 9);
    granted(await record(db, id, { "standing.plants": "80", "standing.on": "2026-07-01" }));
    expect((await figuresOfAll(db)).get(lot)?.effectiveSize).toBeCloseTo(64, 9);
  });

  test("of males set the males standing where the sexes are separate, and are refused elsewhere", async () => {
    const db = await fresh();
    const spinach = await aGrowOut(db, { cropKey: "spinach", name: "Dun 2026" });
    granted(await record(db, spinach, { "standing.plants": "70", "standing.males": "30" }));
    expect(await numbersOf(db, spinach)).toMatchObject({ plantsStanding: 70, malesStanding: 30 });
    expect(await refusals(record(db, spinach, { "flowering.plants": "20", "flowering.males": "21" }))).toEqual([
      ["cannot-be", "flowering.males"],
    ]);
    const maize = await aGrowOut(db);
    expect(await refusals(record(db, maize, { "standing.plants": "70", "standing.males": "30" }))).toEqual([
      ["no-males", "standing.males"],
    ]);
    expect(await db.read.stageCount.count({ where: { growOutId: maize } })).toBe(0);
  });

  test("that cannot be are refused at their place, and nothing of the sheet is stored", async () => {
    const db = await fresh();
    const id = await aGrowOut(db, { seedsSown: 100 });
    expect(await refusals(record(db, id, { "up.plants": "101" }))).toEqual([["cannot-be", "up.plants"]]);
    const sheet = { "up.plants": "90", "standing.plants": "60", "flowering.plants": "61" };
    expect(await refusals(record(db, id, sheet))).toEqual([["cannot-be", "flowering.plants"]]);
    expect(await refusals(record(db, id, { "lifted.plants": "50", "replanted.plants": "51" }))).toEqual([
      ["cannot-be", "replanted.plants"],
    ]);
    expect(await refusals(record(db, id, { "up.plants": "9", "up.on": "2026-04-30" }))).toEqual([
      ["before-sowing", "up.on"],
    ]);
    expect(await refusals(record(db, id, { "up.plants": "9", "up.on": "2026-09-02" }))).toEqual([["not-yet", "up.on"]]);
    expect(await refusals(record(db, id, { "up.on": "2026-06-01" }))).toEqual([["missing", "up.plants"]]);
    expect(await refusals(record(db, id, { "up.plants": "9.5" }))).toEqual([["not-a-count", "up.plants"]]);
    expect(await refusals(record(db, id, {}))).toEqual([["missing", "up.plants"]]);
    expect(await refusals(record(db, id, { "up.plants": "9", by: "nobody" }))).toEqual([["unknown", "by"]]);
    expect(await refusals(record(db, "none", { "up.plants": "9" }))).toEqual([["unknown", "growOut"]]);
    expect(await db.read.stageCount.count()).toBe(0);
    expect(await numbersOf(db, id)).toMatchObject({ plantsStanding: null });
  });

  test("that leave fewer than gave seed are refused: the harvest says otherwise", async () => {
    const db = await fresh();
    const id = await aGrowOut(db, { plantsStanding: 50, seedParents: 40, seedShares: "equal" });
    expect(await refusals(record(db, id, { "standing.plants": "39" }))).toEqual([
      ["fewer-left-than-gave-seed", "standing.plants"],
    ]);
    expect(await numbersOf(db, id)).toMatchObject({ plantsStanding: 50 });
  });

  test("that are only odd are stored and warned of", async () => {
    const db = await fresh();
    const beet = await aGrowOut(db, { cropKey: "beet", seedsSown: 100, name: "Cellar 2026" });
    const odd = granted(await record(db, beet, { "up.plants": "130", "thinned.plants": "131" })).value.warnings;
    expect(odd.map(({ code }) => code)).toEqual(["more-than-sown", "more-than-before", "more-than-sown"]);
    expect(await db.read.stageCount.count({ where: { growOutId: beet } })).toBe(2);
  });

  test("count what flowers: plants pulled before are added, so that pollen parents are those in flower", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    granted(await record(db, id, { "standing.plants": "60", "standing.on": "2026-06-20" }));
    await db.write.roguePass.create({
      data: { id: "r", growOutId: id, pulled: 4, timing: "before", ...dated("2026-07-01") },
    });
    expect(await refusals(record(db, id, { "flowering.plants": "57", "flowering.on": "2026-07-20" }))).toEqual([
      ["cannot-be", "flowering.plants"],
    ]);
    granted(await record(db, id, { "flowering.plants": "52", "flowering.on": "2026-07-20" }));
    // 52 flowered and 4 were pulled before: 56 less 4 shed pollen; the pass counts from now on.
    expect(await numbersOf(db, id)).toMatchObject({ plantsStanding: 56, roguedBeforePollen: 4 });
  });

  test("are corrected by a new one that points to the old, and the numbers follow", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    const [wrong = ""] = granted(await record(db, id, { "standing.plants": "84" })).value.ids;
    const [right = ""] = granted(await correct(db, wrong, { stage: "standing", plants: "48" })).value.ids;
    expect(await db.read.stageCount.findUnique({ where: { id: right } })).toMatchObject({
      replacesId: wrong,
      plants: 48,
    });
    expect(await numbersOf(db, id)).toMatchObject({ plantsStanding: 48 });
    const again = await correct(db, wrong, { stage: "standing", plants: "47" });
    expect(again).toMatchObject({ ok: false, refusals: [{ code: "corrected-already" }] });
    expect(await refusals(correct(db, right, { stage: "standing", plants: "47", why: "" }))).toEqual([
      ["missing", "why"],
    ]);
    // It was no count of what stands after all.
    granted(await correct(db, right, { stage: "thinned", plants: "48", thinnedBy: "random" }));
    expect(await numbersOf(db, id)).toMatchObject({ plantsStanding: null });
  });

  test("are taken back with what they replaced, and what a hand wrote before stands again", async () => {
    const db = await fresh();
    const id = await aGrowOut(db, { plantsStanding: null });
    const title = "Grow-out put right";
    granted(
      await perform(db, owner, { action: "correct", title }, async (change) => {
        await change.update("GrowOut", id, { plantsStanding: 44 });
        return { ok: true, value: null };
      }),
    );
    const [wrong = ""] = granted(await record(db, id, { "standing.plants": "84" })).value.ids;
    const [right = ""] = granted(await correct(db, wrong, { stage: "standing", plants: "48" })).value.ids;
    granted(await takeBackFieldRecord(db, owner, "StageCount", right, "another plot", today));
    expect(await db.read.stageCount.count()).toBe(0);
    expect(await numbersOf(db, id)).toMatchObject({ plantsStanding: 44 });
    const gone = await takeBackFieldRecord(db, owner, "StageCount", right, "again", today);
    expect(gone).toMatchObject({ ok: false, refusals: [{ code: "unknown" }] });
  });
});

import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { correctRoguePass, recordRogueWalk } from "@/lib/registry/grow-outs/record-rogue-walk";
import { takeBackFieldRecord } from "@/lib/registry/grow-outs/take-back-field-record";
import { roguePassCorrectionSchema, rogueWalkSchema } from "@/lib/schemas/grow-outs/field-counts";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aGrowOut, dated, numbersOf } from "./a-grow-out";

const owner = ownerHere();
const today = "2026-09-01";

async function record(db: Database, growOutId: string, typed: Record<string, string>) {
  const input = parseForm(rogueWalkSchema("north"), typed);
  return input.ok ? recordRogueWalk(db, owner, growOutId, input.value, today) : input;
}

async function correct(db: Database, id: string, typed: Record<string, string>) {
  const input = parseForm(roguePassCorrectionSchema("north"), { why: "miscounted", ...typed });
  return input.ok ? correctRoguePass(db, owner, id, input.value, today) : input;
}

const refusals = async (outcome: ReturnType<typeof record>) => {
  const answer = await outcome;
  return answer.ok ? [] : answer.refusals.map(({ code, path }) => [code, path.join(".")]);
};

const standing = (growOutId: string, plants: number, on = "2026-06-10") => ({
  data: { id: `s${plants}`, growOutId, stage: "standing", plants, ...dated(on) },
});

onEveryEngine("a rogue pass", (fresh) => {
  test("is a line for each reason, and adds up before and after pollen shed", async () => {
    const db = await fresh();
    const id = await aGrowOut(db, { plantsStanding: 120 });
    const first = {
      on: "2026-06-20",
      stage: "leaf",
      timing: "before",
      looked: "120",
      "pulled.off-type-colour": "3",
      "pulled.sick": "2",
      left: "115",
      note: "the wet end",
    };
    granted(await record(db, id, first));
    expect(await db.read.roguePass.findMany({ orderBy: { id: "asc" } })).toMatchObject([
      { reason: "off-type colour", pulled: 3, looked: 120, left: 115, stage: "leaf", timing: "before" },
      { reason: "sick", pulled: 2, looked: 120, note: "the wet end", ...dated("2026-06-20") },
    ]);
    granted(await record(db, id, { on: "2026-07-10", timing: "before", looked: "115", "pulled.weak": "1" }));
    granted(await record(db, id, { on: "2026-08-20", timing: "after", looked: "114", "pulled.not-said": "4" }));
    expect(await numbersOf(db, id)).toMatchObject({
      plantsStanding: 120,
      roguedBeforePollen: 6,
      roguedAfterPollen: 4,
    });
  });

  test("that found none says so with the plants looked at: not looked is not none found", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    granted(await record(db, id, { on: "2026-06-20", timing: "before", looked: "80", noneFound: "yes" }));
    expect(await db.read.roguePass.findFirst()).toMatchObject({ pulled: 0, looked: 80, reason: null });
    expect(await numbersOf(db, id)).toMatchObject({ roguedBeforePollen: 0, roguedAfterPollen: null });
    expect(await refusals(record(db, id, { on: "2026-06-21", timing: "before", noneFound: "yes" }))).toEqual([
      ["not-looked", "looked"],
    ]);
    expect(await refusals(record(db, id, { on: "2026-06-21", timing: "before", looked: "80" }))).toEqual([
      ["missing", "noneFound"],
    ]);
    const both = { on: "2026-06-21", timing: "before", looked: "80", noneFound: "yes", "pulled.weak": "1" };
    expect(await refusals(record(db, id, both))).toEqual([["missing", "noneFound"]]);
  });

  test("that cannot be is refused at its place", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    await db.write.stageCount.create(standing(id, 60));
    const walk = { on: "2026-06-20", timing: "before", looked: "60", "pulled.weak": "5" };
    const of = (more: Record<string, string>) => refusals(record(db, id, { ...walk, ...more }));
    expect(await of({ looked: "4" })).toEqual([["cannot-be", "pulled"]]);
    expect(await of({ looked: "61" })).toEqual([["cannot-be", "looked"]]);
    expect(await of({ looked: "", "pulled.weak": "61" })).toEqual([["cannot-be", "pulled"]]);
    expect(await of({ left: "54" })).toEqual([["cannot-be", "left"]]);
    expect(await of({ left: "56" })).toEqual([["cannot-be", "left"]]);
    expect(await of({ on: "2026-04-01" })).toEqual([["before-sowing", "on"]]);
    expect(await of({ on: "2027-06-20" })).toEqual([["not-yet", "on"]]);
    expect(await of({ on: "" })).toEqual([["missing", "on"]]);
    expect(await of({ timing: "" })).toEqual([["missing", "timing"]]);
    expect(await of({ stage: "at noon" })).toEqual([["not-one-of", "stage"]]);
    expect(await db.read.roguePass.count()).toBe(0);
    granted(await record(db, id, { ...walk, left: "55" }));
    // 55 were left of 60
    expect(await of({ on: "2026-07-01", looked: "56" })).toEqual([["cannot-be", "looked"]]);
  });

  test("that pulls more than stood, or leaves fewer than gave seed, is refused", async () => {
    const db = await fresh();
    const id = await aGrowOut(db, { plantsStanding: 50, seedParents: 40, seedShares: "equal" });
    const of = (pulled: string) => record(db, id, { on: "2026-06-20", timing: "before", "pulled.weak": pulled });
    expect(await refusals(of("51"))).toEqual([["more-rogued-than-stood", "pulled"]]);
    expect(await refusals(of("11"))).toEqual([["fewer-left-than-gave-seed", "pulled"]]);
    granted(await of("10"));
    expect(await numbersOf(db, id)).toMatchObject({ roguedBeforePollen: 10, plantsStanding: 50 });
  });

  test("that is only odd is stored and warned of", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    await db.write.stageCount.create(standing(id, 120));
    await db.write.floweringNote.create({
      data: { id: "f", growOutId: id, organ: "pollen", moment: "first", ...dated("2026-07-10") },
    });
    const codes = async (typed: Record<string, string>) =>
      granted(await record(db, id, typed)).value.warnings.map(({ code }) => code);
    // maize: the floor is 100 plants
    expect(await codes({ on: "2026-07-15", timing: "before", looked: "50", "pulled.weak": "21" })).toEqual([
      "pollen-had-flown",
      "pulled-hard",
      "below-floor",
    ]);
    expect(await codes({ on: "2026-07-20", timing: "not said", looked: "99", "pulled.bitter": "1" })).toEqual([
      "timing-not-said",
      "bitter",
      "below-floor",
    ]);
  });

  test("is corrected by a new one that points to the old, judged with the other lines of its walk", async () => {
    const db = await fresh();
    const id = await aGrowOut(db, { plantsStanding: 60 });
    const walk = { on: "2026-06-20", timing: "before", looked: "20" };
    const { ids } = granted(await record(db, id, { ...walk, "pulled.sick": "6", "pulled.weak": "5" })).value;
    const [sick = ""] = ids;
    expect(await refusals(correct(db, sick, { ...walk, pulled: "16", reason: "sick" }))).toEqual([
      ["cannot-be", "pulled"],
    ]);
    const [right = ""] = granted(await correct(db, sick, { ...walk, pulled: "4", reason: "off-type form" })).value.ids;
    expect(await db.read.roguePass.findUnique({ where: { id: right } })).toMatchObject({ replacesId: sick, pulled: 4 });
    expect(await numbersOf(db, id)).toMatchObject({ roguedBeforePollen: 9 });
    // The line was after pollen shed: nothing of it counts before any more.
    granted(await correct(db, right, { ...walk, timing: "after", pulled: "4", reason: "off-type form" }));
    expect(await numbersOf(db, id)).toMatchObject({ roguedBeforePollen: 5, roguedAfterPollen: 4 });
  });

  test("that a notebook told in its own words keeps them when it is corrected", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    const told = { stage: "first autumn", reason: "rust", pulled: 10, timing: "before", looked: 87 };
    await db.write.roguePass.create({ data: { id: "told", growOutId: id, ...told, ...dated("2026-06-18") } });
    const typed = {
      on: "2026-06-18",
      stage: "first autumn",
      timing: "before",
      looked: "87",
      pulled: "9",
      reason: "rust",
    };
    const [right = ""] = granted(await correct(db, "told", typed)).value.ids;
    expect(await db.read.roguePass.findUnique({ where: { id: right } })).toMatchObject({ ...told, pulled: 9 });
  });

  test("is taken back, and the numbers follow", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    const walk = { on: "2026-06-20", timing: "before", looked: "60" };
    const [line = ""] = granted(await record(db, id, { ...walk, "pulled.weak": "5" })).value.ids;
    granted(await takeBackFieldRecord(db, owner, "RoguePass", line, "another bed", today));
    expect(await db.read.roguePass.count()).toBe(0);
    expect(await numbersOf(db, id)).toMatchObject({ roguedBeforePollen: null });
  });
});

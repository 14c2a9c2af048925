import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { correctFlowering, recordFlowering } from "@/lib/registry/grow-outs/record-flowering";
import { takeBackFieldRecord } from "@/lib/registry/grow-outs/take-back-field-record";
import { floweringCorrectionSchema, floweringNotesSchema } from "@/lib/schemas/grow-outs/field-counts";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aGrowOut, dated } from "./a-grow-out";

const owner = ownerHere();
const today = "2026-09-01";

async function record(db: Database, growOutId: string, typed: Record<string, string>) {
  const input = parseForm(floweringNotesSchema("north"), typed);
  return input.ok ? recordFlowering(db, owner, growOutId, input.value, today) : input;
}

async function correct(db: Database, id: string, typed: Record<string, string>) {
  const input = parseForm(floweringCorrectionSchema("north"), { why: "the year before", ...typed });
  return input.ok ? correctFlowering(db, owner, id, input.value, today) : input;
}

const refusals = async (outcome: ReturnType<typeof record>) => {
  const answer = await outcome;
  return answer.ok ? [] : answer.refusals.map(({ code, path }) => [code, path.join(".")]);
};

onEveryEngine("flowering notes", (fresh) => {
  test("are recorded several at a time, pollen and silk apart", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    const typed = {
      "silk.first": "2026-07-21",
      "pollen.last": "2026-08",
      "pollen.first": "2026-07-18",
      note: "dry year",
    };
    granted(await record(db, id, typed));
    expect(await db.read.floweringNote.findMany({ orderBy: { id: "asc" } })).toMatchObject([
      { organ: "pollen", moment: "first", ...dated("2026-07-18"), note: "dry year" },
      { organ: "pollen", moment: "last", ...dated("2026-08") },
      { organ: "silk", moment: "first", ...dated("2026-07-21") },
    ]);
  });

  test("are refused where the last lies before the first; a vague day may still be in order", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    expect(await refusals(record(db, id, { "flower.first": "2026-07-18", "flower.last": "2026-07-17" }))).toEqual([
      ["out-of-order", "flower.last"],
    ]);
    granted(await record(db, id, { "flower.first": "2026-07-18", "flower.last": "2026-07" }));
    expect(await refusals(record(db, id, { "flower.half": "2026-07-17" }))).toEqual([["out-of-order", "flower.half"]]);
    expect(await refusals(record(db, id, { "flower.first": "2026-07-10" }))).toEqual([
      ["noted-already", "flower.first"],
    ]);
    expect(await refusals(record(db, id, { "pollen.first": "2026-04" }))).toEqual([["before-sowing", "pollen.first"]]);
    expect(await refusals(record(db, id, { "pollen.first": "2026-10" }))).toEqual([["not-yet", "pollen.first"]]);
    expect(await refusals(record(db, id, { note: "nothing seen" }))).toEqual([["missing", ""]]);
    expect(await db.read.floweringNote.count()).toBe(2);
  });

  test("that are odd are stored and warned of", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    // maize flowers 55 days after sowing at the soonest
    const early = { "pollen.first": "2026-05-20", "pollen.last": "2026-07-01", "silk.first": "2026-07-05" };
    const { warnings } = granted(await record(db, id, early)).value;
    expect(warnings.map(({ code }) => code)).toEqual(["early-flower", "no-pollen-left"]);
  });

  test("are corrected by a new one that points to the old, and taken back with what they replaced", async () => {
    const db = await fresh();
    const id = await aGrowOut(db);
    const [wrong = ""] = granted(await record(db, id, { "flower.first": "2026-07-18" })).value.ids;
    granted(await record(db, id, { "flower.last": "2026-08-18" }));
    const late = { organ: "flower", moment: "first", on: "2026-08-20" };
    expect(await refusals(correct(db, wrong, late))).toEqual([["out-of-order", "on"]]);
    const [right = ""] = granted(await correct(db, wrong, { ...late, on: "2026-07-08" })).value.ids;
    expect(await db.read.floweringNote.findUnique({ where: { id: right } })).toMatchObject({ replacesId: wrong });
    granted(await takeBackFieldRecord(db, owner, "FloweringNote", right, "another variety", today));
    expect(await db.read.floweringNote.findMany()).toMatchObject([{ moment: "last" }]);
  });
});

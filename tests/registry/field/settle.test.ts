import { createHash } from "node:crypto";
import { Readable } from "node:stream";
import sharp from "sharp";
import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { settleFieldRecords, waysToSettle } from "@/lib/registry/field/settle-field-records";
import { photoHasCome } from "@/lib/registry/field/take-again";
import { plantsOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";
import { receivePhoto } from "@/lib/registry/photos/arriving";
import { answerSamePlant, takeSamePlantBack } from "@/lib/registry/plants/same-plant";
import { settleFieldSchema } from "@/lib/schemas/field/settle-field";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { onEveryEngine } from "../../setup/engines";
import { granted, temporaryFolder } from "../../setup/registry";
import { aGrowOut, numbersOf } from "../grow-outs/a-grow-out";
import { aGrowOut as scoredGrowOut } from "../plants/a-grow-out";
import { aPlant, counted, keep, now, openQuestions, Phone, walked } from "./a-phone";

const owner = ownerHere();

async function settle(db: Database, ids: readonly string[], typed: Record<string, string>) {
  const input = parseForm(settleFieldSchema, { on: "", why: "looked", ...typed });
  return input.ok ? settleFieldRecords(db, owner, ids, input.value, now) : input;
}

const codes = async (outcome: ReturnType<typeof settle>) => {
  const answer = await outcome;
  return answer.ok ? [] : answer.refusals.map(({ code }) => code);
};

onEveryEngine("a question of the field", (fresh) => {
  test("is settled by keeping what was recorded, by the day that is right, or by setting it aside", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db);
    const phone = new Phone(growOutId);
    const count = phone.makes("count", counted(20), { on: "2026-07-20" });
    const walk = phone.makes("walk", walked({ looked: 30, pulled: [{ reason: "weak", plants: 2 }] }));
    const [early, wrong] = [1, 2].map((name) => phone.makes("mark", keep(aPlant(`${name}`)), { on: "2027-02-01" }));
    await phone.sends(db, [count, walk, early, wrong]);
    expect(await openQuestions(db)).toHaveLength(3);
    granted(await settle(db, [walk.id], { how: "keep", why: "ten were counted in the next row" }));
    expect(await db.read.roguePass.findMany()).toMatchObject([{ id: walk.id, pulled: 2 }]);
    expect(await numbersOf(db, growOutId)).toMatchObject({ roguedBeforePollen: 2 });
    granted(await settle(db, [early?.id ?? ""], { how: "day", on: "2026-08-02" }));
    expect(await db.read.mark.findMany()).toMatchObject([{ id: early?.id, on: "2026-08-02" }]);
    granted(await settle(db, [wrong?.id ?? ""], { how: "set aside", why: "played with" }));
    expect(await db.read.plant.count()).toBe(1);
    expect(await openQuestions(db)).toEqual([]);
    const answers = await db.read.question.findMany({ orderBy: { id: "asc" } });
    expect(answers.map(({ answer }) => answer)).toEqual(["ten were counted in the next row", "looked", "played with"]);
    const states = await db.read.fieldRecord.findMany({ orderBy: { sequence: "asc" } });
    expect(states.map(({ state }) => state)).toEqual(["taken", "taken", "taken", "set aside"]);
    expect(await phone.sends(db, [wrong])).toEqual(["held"]);
    expect(await codes(settle(db, [wrong?.id ?? ""], { how: "keep" }))).toEqual(["settled-already"]);
    // Taken back, what was decided is asked again, and can be decided otherwise.
    const kept = await db.read.changeSet.findFirstOrThrow({ where: { reason: "ten were counted in the next row" } });
    granted(await undoChangeSet(db, owner, kept.id));
    expect(await openQuestions(db)).toHaveLength(1);
    expect(await db.read.roguePass.count()).toBe(0);
    granted(await settle(db, [walk.id], { how: "set aside", why: "another row after all" }));
    expect(await openQuestions(db)).toEqual([]);
  });

  test("cannot be settled so that a value stands which its trait has not, nor on a day that has not come", async () => {
    const db = await fresh();
    const growOut = await scoredGrowOut(db);
    const phone = new Phone(growOut.id);
    const traitId = growOut.vigourId;
    const score = phone.makes("score", { plant: aPlant("1"), traitId, value: 12, text: null, replaces: null });
    const mark = phone.makes("mark", keep(aPlant("2")), { on: "2027-02-01" });
    await phone.sends(db, [score, mark]);
    expect(await codes(settle(db, [score.id], { how: "keep" }))).toEqual(["cannot-stand"]);
    expect(await codes(settle(db, [mark.id], { how: "day", on: "2027-01-01" }))).toEqual(["not-yet"]);
    expect(await codes(settle(db, [mark.id], { how: "day" }))).toEqual(["missing"]);
    expect(await codes(settle(db, [mark.id], { how: "keep", why: "" }))).toEqual(["missing"]);
    const rows = await db.read.fieldRecord.findMany({ orderBy: { sequence: "asc" } });
    expect(rows.map(waysToSettle)).toEqual([
      { keep: false, day: false },
      { keep: true, day: true },
    ]);
    expect(await db.read.mark.count()).toBe(0);
  });

  test("whether two marked one plant is answered by a person, read as one, and taken back as it was", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db);
    const [one, two] = [new Phone(growOutId, "Reed"), new Phone(growOutId, "Sedge")];
    const [first, second] = [aPlant("12"), aPlant("12", { row: "3" })];
    await one.sends(db, [one.makes("mark", keep(first))]);
    await two.sends(db, [two.makes("mark", keep(second, { intent: "pull" })), two.makes("mark", keep(aPlant("13")))]);
    const [asked] = await db.read.question.findMany();
    expect(await openQuestions(db)).toHaveLength(1);
    granted(await answerSamePlant(db, owner, asked?.id ?? "", { same: true, why: "one stake" }, "2026-08-20"));
    const { plants } = await plantsOfGrowOut(db, growOutId);
    expect(
      plants.map(({ name, otherNames, row, marks }) => [name, otherNames, row, marks.map(({ intent }) => intent)]),
    ).toEqual([
      ["12", ["12 (2)"], "3", ["keep", "pull"]],
      ["13", [], null, ["keep"]],
    ]);
    const again = await answerSamePlant(db, owner, asked?.id ?? "", { same: true, why: "one stake" }, "2026-08-20");
    expect(again.ok ? [] : again.refusals.map(({ code }) => code)).toEqual(["settled-already"]);
    granted(await takeSamePlantBack(db, owner, second.id, "two stakes after all"));
    expect((await plantsOfGrowOut(db, growOutId)).plants.map(({ name }) => name)).toEqual(["12", "12 (2)", "13"]);
    granted(await answerSamePlant(db, owner, asked?.id ?? "", { same: false, why: "two stakes" }, "2026-08-20"));
    await two.sends(db, [two.makes("mark", keep(second))]);
    expect(await openQuestions(db)).toEqual([]);
    const none = await takeSamePlantBack(db, owner, second.id, "why");
    expect(none.ok ? [] : none.refusals.map(({ code }) => code)).toEqual(["not-the-same"]);
  });

  test("a picture waits for its file, and stands when that comes", async () => {
    const opened = await fresh();
    const db = { ...opened, location: { ...opened.location, folder: temporaryFolder() } };
    const phone = new Phone(await aGrowOut(db));
    const file = await sharp({ create: { width: 40, height: 30, channels: 3, background: "#552211" } })
      .jpeg()
      .toBuffer();
    const hash = createHash("sha256").update(new Uint8Array(file)).digest("hex");
    const plant = aPlant("4");
    const record = phone.makes("photo", { plant, traitId: null, hash, caption: "the ear" });
    expect(await phone.sends(db, [record])).toEqual(["waiting"]);
    granted(await receivePhoto(db, hash, Readable.from([file])));
    await photoHasCome(db, owner, hash, now);
    expect(await db.read.photo.findMany()).toMatchObject([
      { id: record.id, plantId: plant.id, growOutId: phone.growOutId, width: 40, height: 30, caption: "the ear" },
    ]);
    expect(await phone.sends(db, [record])).toEqual(["held"]);
  });
});

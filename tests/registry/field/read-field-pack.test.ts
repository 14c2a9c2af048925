import { uuidv7 } from "uuidv7";
import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { readFieldPack } from "@/lib/registry/field/read-field-pack";
import { fieldPack } from "@/lib/schemas/field/field-pack";
import { defaultSettings } from "@/lib/schemas/settings";
import { onEveryEngine } from "../../setup/engines";
import { dated } from "../grow-outs/a-grow-out";
import { aGrowOut, row, save } from "../plants/a-grow-out";
import { now } from "./a-phone";

const question = { settings: defaultSettings, today: "2026-08-01" };

onEveryEngine("what a phone takes to the field", (fresh) => {
  test("is the plan, the type, traits with scales and pictures, marks that stand, and what was walked and counted", async () => {
    const db = await fresh();
    const growOut = await aGrowOut(db);
    const { id: growOutId, varietyId } = growOut;
    await save(db, growOutId, [
      row("new", { tag: "12", intent: "keep", [growOut.vigour]: "7", [growOut.silk]: "y" }, {}, true),
    ]);
    await db.write.typeTrait.create({
      data: { id: uuidv7(), varietyId, trait: "silk", allowed: "red", offType: "white" },
    });
    await db.write.photo.create({
      data: { id: uuidv7(), hash: "a".repeat(64), traitId: growOut.vigourId, width: 8, height: 8, bytes: 90 },
    });
    await db.write.stageCount.create({
      data: { id: uuidv7(), growOutId, stage: "standing", plants: 40, ...dated("2024-06-10") },
    });
    await db.write.roguePass.createMany({
      data: [
        { id: uuidv7(), growOutId, ...dated("2024-06-20"), looked: 40, pulled: 2, reason: "sick" },
        { id: uuidv7(), growOutId, ...dated("2024-06-20"), looked: 40, pulled: 1, reason: "weak" },
      ],
    });
    const pack = await readFieldPack(db, ownerHere(), growOutId, now, question);
    expect(fieldPack.parse(pack)).toEqual(pack);
    expect(pack).toMatchObject({
      madeAt: now.toISOString(),
      growOut: { id: growOutId, name: "Mill 2024" },
      crop: { key: "maize-field", separate: false },
      hand: { stewardId: null, name: "the owner" },
      type: [{ trait: "silk", words: "red; off-type: white" }],
      plants: [{ plant: { name: "12" }, mark: { tag: "12", intent: "keep" } }],
      counts: [{ stage: "standing", plants: 40, on: "2024-06-10" }],
      walks: [{ on: "2024-06-20", looked: 40, pulled: 3, reason: "sick, weak" }],
    });
    expect(pack?.plants[0]?.scores.map(({ trait, value }) => [trait, value])).toEqual([
      [growOut.vigourId, 7],
      [growOut.silkId, 1],
    ]);
    const [vigour, silk] = pack?.traits ?? [];
    expect(vigour).toMatchObject({
      ...{ id: growOut.vigourId, kind: "scale", scaleLow: 1, scaleHigh: 9, photos: ["a".repeat(64)] },
      steps: [
        { value: 1, words: "weak" },
        { value: 9, words: "strong" },
      ],
    });
    expect(silk).toMatchObject({ kind: "yes-no", steps: [] });
  });

  test("is nothing where there is no such grow-out", async () => {
    expect(await readFieldPack(await fresh(), ownerHere(), uuidv7(), now, question)).toBeNull();
  });
});

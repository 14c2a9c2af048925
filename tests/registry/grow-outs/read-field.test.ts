import { uuidv7 } from "uuidv7";
import { expect, test } from "vitest";
import { readField } from "@/lib/registry/grow-outs/read-field";
import { readGrowOut } from "@/lib/registry/grow-outs/read-grow-out";
import { sizeSoFar } from "@/lib/registry/grow-outs/size-so-far";
import { offTypesPulled, walksOf } from "@/lib/registry/grow-outs/walks";
import { onEveryEngine } from "../../setup/engines";
import { aLot } from "../lots/lots-in-tests";
import { aGrowOut, dated } from "./a-grow-out";

onEveryEngine("the field of a grow-out", (fresh) => {
  test("is read with what stands, the passes of the variety's other years, and the ground of its size", async () => {
    const db = await fresh();
    const id = await aGrowOut(db, { plantsStanding: 60, roguedBeforePollen: 3, seedParentsPlanned: 30 });
    const { varietyId } = await db.read.growOut.findUniqueOrThrow({ where: { id } });
    const lotId = await aLot(db, varietyId, { number: "Sallow 1", inbreeding: 0.1 });
    await db.write.growOutParent.create({ data: { id: uuidv7(), growOutId: id, lotId, share: 1 } });
    const earlier = await aGrowOut(db, { varietyId, name: "Sallow 2024", sown: "2024-05-01" });
    const other = await aGrowOut(db, { name: "Elsewhere" });
    const wrong = uuidv7();
    for (const row of [
      { id: wrong, growOutId: id, stage: "standing", plants: 66, ...dated("2026-06-10") },
      { id: uuidv7(), growOutId: id, stage: "standing", plants: 60, ...dated("2026-06-10"), replacesId: wrong },
      { id: uuidv7(), growOutId: id, stage: "up", plants: 90, ...dated("2026-05-20") },
      { id: uuidv7(), growOutId: other, stage: "up", plants: 1, ...dated("2026-05-20") },
    ])
      await db.write.stageCount.create({ data: row });
    const walk = { growOutId: id, looked: 60, timing: "before", ...dated("2026-07-01") };
    for (const row of [
      { id: uuidv7(), ...walk, pulled: 2, reason: "off-type form" },
      { id: uuidv7(), ...walk, pulled: 1, reason: "sick" },
      { id: uuidv7(), ...walk, looked: 57, pulled: 1, reason: "pale", timing: "after", ...dated("2026-08-20") },
      { id: uuidv7(), growOutId: earlier, looked: 80, pulled: 0, ...dated("2024-07-01") },
      { id: uuidv7(), growOutId: other, looked: 80, pulled: 5, ...dated("2026-07-01") },
    ])
      await db.write.roguePass.create({ data: row });
    await db.write.floweringNote.create({
      data: { id: uuidv7(), growOutId: id, organ: "silk", moment: "first", ...dated("2026-07-20") },
    });
    const { crop } = await db.read.variety.findUniqueOrThrow({ where: { id: varietyId }, include: { crop: true } });
    await db.write.cropOverride.create({
      data: { id: uuidv7(), cropId: crop.id, field: "selfIncompatible", value: "yes", reason: "seen here" },
    });

    const read = await readGrowOut(db, id);
    const field = await readField(db, read as NonNullable<typeof read>);
    expect(field.counts.map(({ stage, plants }) => [stage, plants])).toEqual([
      ["up", 90],
      ["standing", 60],
    ]);
    expect(field.passes).toHaveLength(3);
    expect(field.passesOfVariety.map((pass) => pass.growOut)).toEqual(["Sallow 2024", ...Array(3).fill("Sallow 2026")]);
    expect(field.flowering).toMatchObject([{ organ: "silk", moment: "first", on: "2026-07-20" }]);
    expect(field.crop).toEqual({ key: "maize-field", separate: false, clusters: false, biennial: false, wind: true });
    expect(field.size).toMatchObject({ inbreeding: 0.1, seedParentsMeant: 30, floor: 100, over: false });
    expect(field.size.profile.selfIncompatible).toBe("yes");
    expect(sizeSoFar(field.size)).toMatchObject({ state: "before-seed", all: 57 });

    // Two lines are one walk of 60 plants; "pale" is in nobody's list, so it may be an off-type or not.
    expect(walksOf(field.passes).map(({ looked, pulled }) => [looked, pulled])).toEqual([
      [60, 3],
      [57, 1],
    ]);
    expect(offTypesPulled(field.passes)).toEqual({ looked: 60, found: 2, foundAtMost: 3 });
  });
});

import { uuidv7 } from "uuidv7";
import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { enterSentHarvest, readSentHarvest } from "@/lib/registry/field/enter-sent-harvest";
import { readCameHome } from "@/lib/registry/field/read-came-home";
import { readSentRecord } from "@/lib/registry/field/read-sent-record";
import { readGrowOut } from "@/lib/registry/grow-outs/read-grow-out";
import { readSeasonRecords } from "@/lib/registry/season/read-season-records";
import { readSettings } from "@/lib/registry/settings/read-settings";
import { newHarvestSchema } from "@/lib/schemas/harvests/harvest-entry";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aGrowOut } from "../grow-outs/a-grow-out";
import { aPlant, counted, keep, now, Phone } from "./a-phone";

const owner = ownerHere();
const all = { growOutId: null, deviceId: null, from: 0, most: 100 };

onEveryEngine("what came home", (fresh) => {
  test("is told by phone and grow-out, with when it was recorded and when it came, and what became of it", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db);
    const [one, two] = [new Phone(growOutId, "Reed"), new Phone(growOutId, "Sedge")];
    const wrong = [1, 2].map((name) => one.makes("mark", keep(aPlant(`${name}`)), { on: "2027-02-01" }));
    await one.sends(db, [...wrong, one.makes("count", counted(30))], { sentAt: "2027-02-01T12:00:00.000Z" });
    await two.sends(db, [two.makes("undo", { of: uuidv7() })]);
    const read = await readCameHome(db, all);
    const phones = read.phones.map(({ name, records, taken, waiting, questions }) => [
      name,
      records,
      taken,
      waiting,
      questions,
    ]);
    expect(phones.sort()).toEqual([
      ["Reed", 3, 1, 0, 2],
      ["Sedge", 1, 0, 1, 0],
    ]);
    // From 20 August 2026, 18:00, to 1 February 2027, 12:00, are 164 days and 18 hours: 237,240 minutes.
    expect(read.phones.find(({ name }) => name === "Reed")?.clockAhead).toBe(237_240);
    expect([read.askedInAll, read.asked.length, read.recordsInAll]).toEqual([2, 2, 4]);
    expect(read.records.find(({ kind }) => kind === "count")).toMatchObject({
      ...{ stand: "taken", phone: "Reed", growOut: "Sallow 2026", recordedAt: "2026-08-01T12:00:00.000Z" },
      arrivedAt: now.toISOString(),
    });
    expect((await readCameHome(db, { ...all, deviceId: two.device.id })).records.map(({ stand }) => stand)).toEqual([
      "waiting",
    ]);
    expect((await readCameHome(db, { ...all, growOutId: uuidv7() })).recordsInAll).toBe(0);
    expect((await readGrowOut(db, growOutId))?.asked).toBe(2);
    const sent = await readSentRecord(db, wrong[0]?.id ?? "");
    expect([sent?.alike.length, sent?.ways, sent?.waiting]).toEqual([2, { keep: true, day: true }, false]);
    expect(await readSentRecord(db, uuidv7())).toBeNull();
    const season = await readSeasonRecords(db, await readSettings(db.read), "2026-08-20");
    expect(season.matters.map(({ kind, sentence }) => [kind, sentence])).toEqual([
      ["field", "from the field, 2 questions of grow-out Sallow 2026"],
    ]);
  });

  test("a harvest that could not be taken is entered at the desk by its form, and its seed with it", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db, { plantsStanding: 1 });
    const phone = new Phone(growOutId);
    const [first, second] = [aPlant("1"), aPlant("2")];
    const harvestId = uuidv7();
    const parts = [first, second].map((plant, place) =>
      phone.makes("taken", { harvestId, plant, fate: "kept", grams: 20 + place, seeds: null, replaces: null }),
    );
    const marks = [first, second].map((plant) => phone.makes("mark", keep(plant)));
    const whole = { harvestId, parts: parts.map(({ id }) => id), bulked: "kept apart" as const, note: "dry" };
    const harvest = phone.makes("harvest", whole, { on: "2026-08-10" });
    expect((await phone.sends(db, [...parts, ...marks, harvest])).at(-1)).toBe("question");
    expect(await readSentHarvest(db, harvest.id)).toMatchObject({
      ...{ on: "2026-08-10", bulked: "kept apart", note: "dry", complete: true },
      parts: [
        { plantId: first.id, grams: 20 },
        { plantId: second.id, grams: 21 },
      ],
    });
    const typed = { on: "2026-08-10", bulked: "kept apart", told: "plants", each: "grams", number: "S 1", holder: "" };
    const row = { plant: first.id, amount: "20", fate: "kept" };
    const input = granted(parseForm(newHarvestSchema("north"), { ...typed, parents: [row], note: "" }));
    const entered = granted(await enterSentHarvest(db, owner, harvest.id, input, "2026-08-20", now));
    expect(entered.value).toMatchObject({ harvestId: harvest.id, number: "S 1" });
    const stands = await db.read.fieldRecord.findMany({ orderBy: { sequence: "asc" } });
    expect(stands.map(({ state }) => state)).toEqual(["taken", "taken", "taken", "taken", "taken"]);
    expect((await readGrowOut(db, growOutId))?.asked).toBe(0);
    const again = await enterSentHarvest(db, owner, harvest.id, input, "2026-08-20", now);
    expect(again.ok ? [] : again.refusals.map(({ code }) => code)).toEqual(["settled-already"]);
    expect(await readSentHarvest(db, harvest.id)).toBeNull();
  });
});

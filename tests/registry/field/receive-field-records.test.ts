import { uuidv7 } from "uuidv7";
import { expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aGrowOut, numbersOf } from "../grow-outs/a-grow-out";
import { aSteward } from "../lots/lots-in-tests";
import { aGrowOut as scoredGrowOut } from "../plants/a-grow-out";
import { aPlant, counted, keep, openQuestions, Phone, walked } from "./a-phone";

const owner = ownerHere();

onEveryEngine("records from the field", (fresh) => {
  test("become marks, scores, passes, counts and flowering notes under their own ids, with the time in the field and of arrival", async () => {
    const db = await fresh();
    const growOut = await scoredGrowOut(db);
    const phone = new Phone(growOut.id);
    const plant = aPlant("12", { row: "3", position: 14 });
    const score = (traitId: string, value: number) => ({ plant, traitId, value, text: null, replaces: null });
    const records = [
      phone.makes("mark", keep(plant, { words: "tall" }), { recordedAt: "2026-08-01T07:30:00.000Z" }),
      phone.makes("score", score(growOut.vigourId, 7)),
      phone.makes("score", score(growOut.silkId, 1)),
      phone.makes("count", counted(40)),
      phone.makes(
        "walk",
        walked({
          looked: 40,
          pulled: [
            { reason: "sick", plants: 2 },
            { reason: null, plants: 1 },
          ],
        }),
      ),
      phone.makes("walk", walked({ looked: 37 }), { on: "2026-08-02" }),
      phone.makes("flowering", { organ: "pollen", moment: "first", note: null }),
    ];
    expect(await phone.sends(db, records)).toEqual(records.map(() => "taken"));
    expect(await db.read.plant.findMany()).toMatchObject([{ id: plant.id, name: "12", row: "3", position: 14 }]);
    expect(await db.read.mark.findMany()).toMatchObject([
      {
        ...{ id: records[0]?.id, tag: "12", intent: "keep", words: "tall", on: "2026-08-01" },
        ...{ recordedAt: "2026-08-01T07:30:00.000Z", deviceId: phone.device.id, deviceSequence: 1 },
      },
    ]);
    expect(await db.read.score.findMany({ orderBy: { deviceSequence: "asc" } })).toMatchObject([
      { id: records[1]?.id, value: 7, text: null },
      { id: records[2]?.id, value: null, text: "yes" },
    ]);
    const passes = await db.read.roguePass.findMany({ orderBy: [{ deviceSequence: "asc" }, { pulled: "desc" }] });
    expect(
      passes.map(({ looked, pulled, reason, deviceSequence }) => [looked, pulled, reason, deviceSequence]),
    ).toEqual([
      [40, 2, "sick", 5],
      [40, 1, null, 5],
      [37, 0, null, 6],
    ]);
    expect(await numbersOf(db, growOut.id)).toMatchObject({ plantsStanding: 40, roguedBeforePollen: 3 });
    expect(await db.read.floweringNote.findMany()).toMatchObject([{ organ: "pollen", moment: "first" }]);
    const stored = await db.read.fieldRecord.findMany({ orderBy: { sequence: "asc" } });
    expect(stored.map(({ state, arrivedAt }) => [state, arrivedAt])).toEqual(
      records.map(() => ["taken", "2026-08-20T18:00:00.000Z"]),
    );
    expect(stored.map(({ body }) => JSON.parse(body))).toEqual(records);
    expect(await db.read.fieldDevice.findMany()).toMatchObject([{ id: phone.device.id, name: "Reed" }]);
    const { findings } = await verifyRegistry(db, "/nowhere");
    // The variety is written past the history by these tests; nothing else may be found.
    expect(findings.map(({ sentence }) => sentence)).toEqual([
      "1 of Variety stand in their table, but not in the history.",
    ]);
  });

  test("are taken once, however often and in whatever pieces they come", async () => {
    const db = await fresh();
    const phone = new Phone(await aGrowOut(db));
    const records = [1, 2, 3].map((number) => phone.makes("mark", keep(aPlant(`${number}`))));
    expect(await phone.sends(db, records)).toEqual(["taken", "taken", "taken"]);
    const before = await db.lastChange();
    expect(await phone.sends(db, records.slice(1))).toEqual(["held", "held"]);
    expect(await phone.sends(db, [records[2], records[2]])).toEqual(["held"]);
    expect(await db.lastChange()).toBe(before);
    expect(await db.read.mark.count()).toBe(3);
  });

  test("wait for the one before them, and are taken in the order of their phone", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db);
    const phone = new Phone(growOutId);
    const first = phone.makes("count", counted(20));
    const second = phone.makes("walk", walked({ looked: 25, pulled: [{ reason: "weak", plants: 21 }] }), {
      on: "2026-08-02",
    });
    expect(await phone.sends(db, [second], { unansweredFrom: 1 })).toEqual(["waiting"]);
    expect(await db.read.roguePass.count()).toBe(0);
    expect(await phone.sends(db, [first], { unansweredFrom: 1 })).toEqual(["taken"]);
    expect(
      (await openQuestions(db)).map((sentence) => sentence.includes("21 pulled is more than the 20 that stood")),
    ).toEqual([true]);
    expect(await phone.sends(db, [second], { unansweredFrom: 2 })).toEqual(["question"]);
  });

  test("whose numbers could not be together stand once a later one makes them possible", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db);
    const phone = new Phone(growOutId);
    await phone.sends(db, [phone.makes("count", counted(20), { on: "2026-07-20" })]);
    const walk = phone.makes("walk", walked({ looked: 30, pulled: [{ reason: "weak", plants: 2 }] }));
    expect(await phone.sends(db, [walk])).toEqual(["question"]);
    expect(await openQuestions(db)).toHaveLength(1);
    expect(await phone.sends(db, [phone.makes("count", counted(31), { on: "2026-07-25" })])).toEqual(["taken"]);
    expect(await openQuestions(db)).toEqual([]);
    expect(await db.read.question.findMany()).toMatchObject([{ answer: "Settled by what came later" }]);
    expect(await db.read.roguePass.findMany()).toMatchObject([{ id: walk.id, pulled: 2 }]);
  });

  test("that break a rule are stored and asked about, and nothing else waits for them", async () => {
    const db = await fresh();
    const growOut = await scoredGrowOut(db);
    await db.write.growOut.update({ where: { id: growOut.id }, data: { endedOn: "2026-08-10" } });
    const phone = new Phone(growOut.id);
    const plant = aPlant("7");
    const records = [
      phone.makes("score", { plant, traitId: growOut.vigourId, value: 12, text: null, replaces: null }),
      phone.makes("mark", keep(plant), { on: "2027-01-05" }),
      phone.makes("mark", keep(aPlant("8")), { on: "2026-08-11" }),
      phone.makes("mark", keep(aPlant("9"))),
      phone.makes("score", { plant, traitId: uuidv7(), value: 1, text: null, replaces: null }),
    ];
    expect(await phone.sends(db, records)).toEqual(["question", "question", "question", "taken", "question"]);
    expect(await db.read.plant.findMany()).toMatchObject([{ name: "9" }]);
    const asked = await openQuestions(db);
    expect(asked.map((sentence) => sentence.split(": ").slice(1).join(": "))).toEqual([
      'vigour: "12" is no step of 1 to 9; write a whole number from 1 to 9.',
      '"2027-01-05" has not come yet; write the day in the field, not after today; "2027-01-05" is after the grow-out was over (2026-08-10); write the day in the field, or put the end of the grow-out right.',
      '"2026-08-11" is after the grow-out was over (2026-08-10); write the day in the field, or put the end of the grow-out right.',
      expect.stringContaining("is no trait of this registry any more"),
    ]);
  });

  test("of a plant that was taken out at the desk are asked about; of one that its phone took back, they make it anew", async () => {
    const db = await fresh();
    const phone = new Phone(await aGrowOut(db));
    const [out, back] = [aPlant("1"), aPlant("2")];
    const mark = phone.makes("mark", keep(out));
    await phone.sends(db, [mark]);
    const [set] = await db.read.changeSet.findMany({ orderBy: { number: "desc" }, take: 1 });
    granted(await undoChangeSet(db, owner, set?.id ?? ""));
    expect(await db.read.plant.count()).toBe(0);
    expect(await db.read.fieldRecord.findMany()).toMatchObject([{ id: mark.id, state: "set aside" }]);
    expect(await phone.sends(db, [mark])).toEqual(["held"]);
    expect(await phone.sends(db, [phone.makes("mark", keep(out))])).toEqual(["question"]);
    const second = phone.makes("mark", keep(back));
    await phone.sends(db, [second]);
    await phone.sends(db, [phone.makes("undo", { of: second.id })]);
    expect(await db.read.plant.count()).toBe(0);
    expect(await phone.sends(db, [phone.makes("mark", keep(back))])).toEqual(["taken"]);
    expect(await db.read.plant.findMany()).toMatchObject([{ id: back.id, name: "2" }]);
  });

  test("under an id that another has are kept beside it, once, and nothing is written over", async () => {
    const db = await fresh();
    const phone = new Phone(await aGrowOut(db));
    const record = phone.makes("count", counted(30));
    await phone.sends(db, [record]);
    const other = { ...record, body: counted(31) };
    expect(await phone.sends(db, [other])).toEqual(["question"]);
    expect(await phone.sends(db, [other])).toEqual(["question"]);
    expect(await phone.sends(db, [record])).toEqual(["held"]);
    expect(await db.read.stageCount.findMany()).toMatchObject([{ plants: 30 }]);
    expect(await db.read.fieldRecord.count()).toBe(2);
    expect(await openQuestions(db)).toHaveLength(1);
  });

  test("correct what came before them, and wait for what has not come", async () => {
    const db = await fresh();
    const phone = new Phone(await aGrowOut(db));
    const plant = aPlant("5");
    const first = phone.makes("mark", keep(plant));
    const second = phone.makes("mark", keep(plant, { intent: "pull", replaces: first.id }));
    expect(await phone.sends(db, [second])).toEqual(["waiting"]);
    expect(await phone.sends(db, [first])).toEqual(["taken"]);
    expect(await db.read.mark.findMany({ orderBy: { deviceSequence: "asc" } })).toMatchObject([
      { id: first.id, replacesId: null },
      { id: second.id, replacesId: first.id, intent: "pull" },
    ]);
    await phone.sends(db, [phone.makes("undo", { of: second.id })]);
    expect(await db.read.mark.findMany()).toMatchObject([{ id: first.id, intent: "keep" }]);
  });

  test("stand beside what another scored, equal or not, and give way to the same hand's alone", async () => {
    const db = await fresh();
    const growOut = await scoredGrowOut(db);
    const [halda, osk] = [await aSteward(db, "Halda Morrow"), await aSteward(db, "Osk Tarn")];
    const [first, second] = [new Phone(growOut.id, "Reed", halda), new Phone(growOut.id, "Sedge", osk)];
    const plant = aPlant("12");
    const score = (value: number, replaces: string | null = null) =>
      ({ plant, traitId: growOut.vigourId, value, text: null, replaces }) as const;
    const hers = first.makes("score", score(7));
    // the second phone shows hers, and its hand taps the same step, then another
    const his = second.makes("score", score(7, hers.id));
    const better = second.makes("score", score(6, his.id));
    expect(await first.sends(db, [hers])).toEqual(["taken"]);
    expect(await second.sends(db, [his])).toEqual(["taken"]);
    expect(await second.sends(db, [better])).toEqual(["taken"]);
    // a pack that shows hers once more: his own gives way all the same
    const last = second.makes("score", score(5, hers.id));
    expect(await second.sends(db, [last])).toEqual(["taken"]);
    const rows = await db.read.score.findMany({ orderBy: { value: "desc" } });
    expect(rows.map(({ value, stewardId, replacesId }) => [value, stewardId, replacesId])).toEqual(
      expect.arrayContaining([
        [7, halda, null],
        [7, osk, null],
        [6, osk, his.id],
        [5, osk, better.id],
      ]),
    );
  });

  test("are taken back by their phone, before or after they came, and the numbers follow", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db);
    const phone = new Phone(growOutId);
    const walk = phone.makes(
      "walk",
      walked({
        looked: 40,
        pulled: [
          { reason: "weak", plants: 4 },
          { reason: "sick", plants: 1 },
        ],
      }),
    );
    await phone.sends(db, [phone.makes("count", counted(40), { on: "2026-07-30" }), walk]);
    expect(await numbersOf(db, growOutId)).toMatchObject({ roguedBeforePollen: 5 });
    expect(await phone.sends(db, [phone.makes("undo", { of: walk.id })])).toEqual(["taken"]);
    expect(await numbersOf(db, growOutId)).toMatchObject({ plantsStanding: 40, roguedBeforePollen: null });
    expect(await db.read.roguePass.count()).toBe(0);
    const mark = phone.makes("mark", keep(aPlant("1")));
    expect(await phone.sends(db, [phone.makes("undo", { of: mark.id })])).toEqual(["waiting"]);
    expect(await phone.sends(db, [mark])).toEqual(["held"]);
    expect(await db.read.plant.count()).toBe(0);
  });

  test("of two phones on one plant are both kept, and asked about; the same tag twice on one phone is not", async () => {
    const db = await fresh();
    const growOutId = await aGrowOut(db);
    const [one, two] = [new Phone(growOutId, "Reed"), new Phone(growOutId, "Sedge")];
    const [first, second] = [aPlant("12", { row: "3", position: 14 }), aPlant("40", { row: "3", position: 14 })];
    await one.sends(db, [one.makes("mark", keep(first)), one.makes("mark", keep(aPlant("12")))]);
    expect(await openQuestions(db)).toEqual([]);
    const late = two.makes("mark", keep(second));
    await two.sends(db, [late]);
    expect(await openQuestions(db)).toEqual([
      "Is plant 12 of grow-out Sallow 2026 the same as plant 40? Two hands marked one each at row 3, place 14.",
    ]);
    expect(await db.read.plant.count()).toBe(3);
    await two.sends(db, [two.makes("undo", { of: late.id })]);
    expect(await openQuestions(db)).toEqual([]);
    expect(await db.read.plant.count()).toBe(2);
  });

  test("tell how wrong their phone's clock is", async () => {
    const db = await fresh();
    const phone = new Phone(await aGrowOut(db));
    await phone.sends(db, [phone.makes("count", counted(3))], { sentAt: "2026-08-20T18:42:00.000Z" });
    const [row] = await db.read.fieldRecord.findMany();
    expect(JSON.parse(row?.refusals ?? "[]")).toMatchObject([{ code: "clock-off", given: 42 }]);
  });

  test("that are none of this registry's, or cannot be read, stay on the phone", async () => {
    const db = await fresh();
    const phone = new Phone(await aGrowOut(db));
    const good = phone.makes("count", counted(3));
    const elsewhere = { ...phone.makes("count", counted(3)), growOutId: uuidv7() };
    const odd = { ...phone.makes("count", counted(3)), body: { plants: -1 } };
    const others = new Phone(phone.growOutId).makes("count", counted(3));
    expect(await phone.sends(db, [good, elsewhere, odd, others])).toEqual(["taken", "refused", "refused", "refused"]);
    expect(await db.read.fieldRecord.count()).toBe(1);
  });
});

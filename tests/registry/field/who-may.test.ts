import { uuidv7 } from "uuidv7";
import { expect, test } from "vitest";
import { type Actor, ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { readCameHome } from "@/lib/registry/field/read-came-home";
import { receiveFieldRecords } from "@/lib/registry/field/receive-field-records";
import { settleFieldRecords } from "@/lib/registry/field/settle-field-records";
import { seenBy } from "@/lib/registry/privacy/seen-by";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aGrowOut } from "../grow-outs/a-grow-out";
import { aPlant, counted, keep, now, Phone } from "./a-phone";

async function aSteward(db: Database): Promise<Actor & { readonly stewardId: string }> {
  const id = uuidv7();
  await db.write.steward.create({ data: { id } });
  return { ...ownerHere(), name: "Sorrel", role: "steward", stewardId: id };
}

onEveryEngine("who sends records from the field", (fresh) => {
  test("a steward sends those of the own grow-outs; of another's each is stored and asked of whose it is, and of none here stays on the phone", async () => {
    const db = await fresh();
    const steward = await aSteward(db);
    const own = await aGrowOut(db, { name: "Own 2026", stewardId: steward.stewardId });
    const others = await aGrowOut(db, { name: "Other 2026" });
    const phone = new Phone(own, "Reed", steward.stewardId);
    const good = phone.makes("mark", keep(aPlant("1")));
    const other = { ...phone.makes("mark", keep(aPlant("2"))), growOutId: others };
    const nowhere = { ...phone.makes("mark", keep(aPlant("3"))), growOutId: uuidv7() };
    const seen = seenBy(db, steward);
    const fates = ["taken", "question", "refused"];
    expect(await phone.sends(seen, [good, other, nowhere], { actor: steward })).toEqual(fates);
    expect(await phone.sends(seen, [good], { actor: steward })).toEqual(["held"]);
    expect(await db.read.mark.findMany()).toMatchObject([{ id: good.id, stewardId: steward.stewardId }]);
    const question = await db.read.question.findFirstOrThrow();
    expect(question.sentence).toContain("Sorrel, who recorded it, does not record in this grow-out");
    const home = await readCameHome(seen, { growOutId: null, deviceId: null, from: 0, most: 10 });
    expect([home.recordsInAll, home.phones.map(({ name }) => name)]).toEqual([2, ["Reed"]]);
    // only whose the grow-out is makes a mark of it
    const keeps = { how: "keep" as const, on: null, why: "Sorrel stood in" };
    const tried = await settleFieldRecords(db, steward, [other.id], keeps, now);
    expect(tried.ok ? [] : tried.refusals.map(({ code }) => code)).toContain("not-yours");
    expect(await db.read.mark.count()).toBe(1);
    granted(await settleFieldRecords(db, ownerHere(), [other.id], keeps, now));
    expect((await db.read.mark.findMany({ where: { id: other.id } })).length).toBe(1);
    const stranger = await aSteward(db);
    const nothing = await readCameHome(seenBy(db, stranger), { growOutId: null, deviceId: null, from: 0, most: 10 });
    expect([nothing.recordsInAll, nothing.phones]).toEqual([0, []]);
  });

  test("a helper sends those of named grow-outs, heap after heap; what a helper may not write is asked about, and holds up nothing", async () => {
    const db = await fresh();
    const steward = await aSteward(db);
    const growOutId = await aGrowOut(db, { stewardId: steward.stewardId });
    const helper: Actor = { ...ownerHere(), name: "Teasel", role: "helper", growOutIds: [growOutId] };
    const phone = new Phone(growOutId);
    const seen = seenBy(db, helper);
    const first = [phone.makes("mark", keep(aPlant("1"))), phone.makes("count", counted(30))];
    expect(await phone.sends(seen, first, { actor: helper })).toEqual(["taken", "taken"]);
    const sown = phone.makes("count", counted(90, { stage: "sown" }));
    const second = [phone.makes("mark", keep(aPlant("2"))), sown, phone.makes("mark", keep(aPlant("3")))];
    // How many seeds were sown belongs to the sowing, which is the steward's.
    expect(await phone.sends(seen, second, { actor: helper })).toEqual(["taken", "question", "taken"]);
    expect(await db.read.growOut.findUnique({ where: { id: growOutId } })).toMatchObject({ seedsSown: null });
    expect(await db.read.mark.count()).toBe(3);
    const elsewhere = await aGrowOut(db, { name: "Elsewhere 2026" });
    const other = { ...phone.makes("count", counted(4)), growOutId: elsewhere };
    expect(await phone.sends(seen, [other], { actor: helper })).toEqual(["question"]);
    expect(await db.read.stageCount.count({ where: { growOutId: elsewhere } })).toBe(0);
  });

  test("a reader sends nothing", async () => {
    const db = await fresh();
    const phone = new Phone(await aGrowOut(db));
    const reader: Actor = { ...ownerHere(), role: "reader" };
    const arrival = { device: phone.device, sentAt: null, records: [phone.makes("count", counted(4))] };
    const answer = await receiveFieldRecords(db, reader, arrival, now);
    expect(answer.ok ? [] : answer.refusals.map(({ code }) => code)).toEqual(["not-allowed"]);
    expect(await db.read.fieldRecord.count()).toBe(0);
  });
});

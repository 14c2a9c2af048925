import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { correctLot } from "@/lib/registry/lots/correct-lot";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { correctLotSchema } from "@/lib/schemas/lots/record-lot";
import { emptyRegistry, granted } from "../../setup/registry";
import { aLot, aSteward, aTest, aVariety } from "./lots-in-tests";

const owner = ownerHere();
let db: Database;
let lotId: string;

beforeEach(async () => {
  db = await emptyRegistry();
  lotId = await aLot(db, await aVariety(db), { number: "Ham 3", year: "2019", notes: "by the stairs" });
});

async function correct(fields: Record<string, string>) {
  const typed = { year: "2019", notes: "by the stairs", reason: "read the jar again", ...fields };
  return correctLot(db, owner, lotId, granted(parseForm(correctLotSchema("north"), typed)));
}

const refusalsOf = (outcome: Awaited<ReturnType<typeof correct>>) =>
  outcome.ok ? {} : Object.fromEntries(outcome.refusals.map((each) => [each.path.join("."), each.sentence]));

test("what was and what is stand in the change set with the reason", async () => {
  await aSteward(db, "Oda Fenlight");
  const done = granted(await correct({ year: "2018~", holder: "Oda Fenlight", thousandSeedGrams: "612.5" }));
  const lot = await db.read.lot.findUniqueOrThrow({ where: { id: lotId } });
  expect([lot.year, lot.yearFirst, lot.yearLast, lot.thousandSeedGrams]).toEqual([
    "2018~",
    "2018-01-01",
    "2018-12-31",
    612.5,
  ]);
  const changeSet = await db.read.changeSet.findUniqueOrThrow({
    where: { id: done.changeSetId ?? "" },
    include: { changes: true },
  });
  expect(changeSet.reason).toBe("read the jar again");
  expect(JSON.parse(changeSet.changes[0]?.before ?? "")).toMatchObject({ year: "2019", holderId: null });
});

test("nothing changed leaves no change set", async () => {
  expect(granted(await correct({})).changeSetId).toBeNull();
});

test("a correction without a reason is refused at its field", () => {
  const read = parseForm(correctLotSchema("north"), { year: "2019", reason: " " });
  expect(read.ok ? [] : read.refusals.map((each) => [each.path, each.sentence])).toEqual([
    [["reason"], "nothing stands here; say in a few words why it is changed"],
  ]);
});

test("dead needs a germination test, a hold its reason", async () => {
  expect(Object.keys(refusalsOf(await correct({ status: "dead" })))).toEqual(["status"]);
  expect(Object.keys(refusalsOf(await correct({ status: "hold" })))).toEqual(["statusReason"]);
  await aTest(db, lotId, "T1", "2026-02", 50, 0);
  granted(await correct({ status: "dead" }));
});

test("nothing comes back from discarded", async () => {
  granted(await correct({ status: "discarded", statusReason: "bitter fruit, burnt" }));
  expect(Object.keys(refusalsOf(await correct({ status: "usable" })))).toEqual(["status"]);
});

test("one line or many is said of founder lots only", async () => {
  granted(await correct({ founderLines: "one", inbreeding: "0.9" }));
  await db.write.lot.update({ where: { id: lotId }, data: { founderLines: null, inbreeding: null, kind: "split" } });
  expect(Object.keys(refusalsOf(await correct({ founderLines: "one" })))).toEqual(["founderLines"]);
});

import { uuidv7 } from "uuidv7";
import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { recordLot } from "@/lib/registry/lots/record-lot";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { recordLotSchema } from "@/lib/schemas/lots/record-lot";
import { checkLabelCode } from "@/lib/science/codes/label-code";
import { emptyRegistry, granted } from "../../setup/registry";
import { aSteward, aVariety } from "./lots-in-tests";

const owner = ownerHere();
let db: Database;

beforeEach(async () => {
  db = await emptyRegistry();
  await aVariety(db);
});

const typed = { variety: "hamble long", origin: "received", amountKind: "weighed" };

async function record(fields: Record<string, string>) {
  const input = granted(parseForm(recordLotSchema("north"), { ...typed, ...fields }));
  return recordLot(db, owner, input);
}

const refusalsOf = (outcome: Awaited<ReturnType<typeof record>>) =>
  outcome.ok ? {} : Object.fromEntries(outcome.refusals.map((each) => [each.path.join("."), each.sentence]));

test("a founder lot keeps what was told of it, its first amount and its story", async () => {
  await aSteward(db, "Oda Fenlight");
  const { value } = granted(
    await record({
      number: "Ham 12",
      holder: "oda fenlight",
      year: "1994~",
      yearWords: "about 1994, from her aunt's jar",
      giver: "Aunt Sela",
      amount: "120,5",
      amountKind: "received",
      amountOn: "2003-04",
      story: "She sowed it every other year beside the well.",
      thousandSeedGrams: "640",
      founderLines: "many",
    }),
  );
  const lot = await db.read.lot.findUniqueOrThrow({
    where: { id: value.lotId },
    include: { ledger: true, stories: true, holder: { include: { person: true } }, variety: true },
  });
  expect(lot).toMatchObject({
    number: "Ham 12",
    kind: "founder",
    origin: "received",
    year: "1994~",
    yearFirst: "1994-01-01",
    yearLast: "1994-12-31",
    yearWords: "about 1994, from her aunt's jar",
    thousandSeedGrams: 640,
    founderLines: "many",
    variety: { name: "Hamble Long", revision: 2 },
    holder: { person: { name: "Oda Fenlight" } },
    ledger: [{ kind: "received", amount: 120.5, unit: "g", on: "2003-04", other: "Aunt Sela" }],
    stories: [{ words: "She sowed it every other year beside the well.", teller: "Aunt Sela" }],
  });
  expect(checkLabelCode(lot.code).ok).toBe(true);
});

test("without a number the label code is the number, and both are for life", async () => {
  const { value } = granted(await record({}));
  const lot = await db.read.lot.findUniqueOrThrow({ where: { id: value.lotId } });
  expect(lot.number).toBe(lot.code);
});

test("a number is given once, also in other letter case", async () => {
  granted(await record({ number: "Ham 12" }));
  expect(refusalsOf(await record({ number: "HAM 12" }))).toEqual({
    number:
      '"HAM 12" is the number of lot Ham 12 already; a number is given once and for life: write another, or leave it empty and the label code is the number',
  });
});

test("a variety or a holder that nobody knows is refused with the nearest name, all faults together", async () => {
  await aSteward(db, "Oda Fenlight");
  expect(refusalsOf(await record({ variety: "Hambel Long", holder: "Oda Fenligt" }))).toEqual({
    variety:
      '"Hambel Long" is no variety of this registry; did you mean "Hamble Long"? If not, enter the variety first',
    holder: '"Oda Fenligt" is no steward here; did you mean "Oda Fenlight"? If not, add the steward first',
  });
  expect(await db.read.lot.count()).toBe(0);
});

test("another name of the variety is understood", async () => {
  const { id } = await db.read.variety.findFirstOrThrow();
  await db.write.varietyName.create({ data: { id: uuidv7(), varietyId: id, name: "Longpod", nameKey: "longpod" } });
  granted(await record({ variety: "Longpod" }));
  expect(await db.read.lot.count()).toBe(1);
});

test("a holder who is new here is entered with the lot, and goes again when the lot is taken back", async () => {
  const done = granted(await record({ newHolder: "Rin Olderwick" }));
  expect(await db.read.person.findMany({ select: { name: true } })).toEqual([{ name: "Rin Olderwick" }]);
  granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
  expect([await db.read.person.count(), await db.read.lot.count()]).toEqual([0, 0]);
});

test("a new holder's name that a steward has already is refused, and so are two holders", async () => {
  await aSteward(db, "Oda Fenlight");
  expect(Object.keys(refusalsOf(await record({ newHolder: "oda fenlight" })))).toEqual(["newHolder"]);
  expect(Object.keys(refusalsOf(await record({ holder: "Oda Fenlight", newHolder: "Rin" })))).toEqual(["newHolder"]);
});

test("one more harvest of a grow-out on record becomes a lot of it; a grow-out of another variety is refused", async () => {
  const varietyId = (await db.read.variety.findFirstOrThrow()).id;
  const other = await aVariety(db, "Dell Amber");
  await db.write.growOut.create({ data: { id: uuidv7(), name: "G5", nameKey: "g5", varietyId } });
  await db.write.growOut.create({ data: { id: uuidv7(), name: "G6", nameKey: "g6", varietyId: other } });
  const { value } = granted(await record({ origin: "harvest", growOut: "g5" }));
  const lot = await db.read.lot.findUniqueOrThrow({ where: { id: value.lotId }, include: { growOut: true } });
  expect([lot.kind, lot.growOut?.name]).toEqual(["harvest", "G5"]);
  expect(Object.keys(refusalsOf(await record({ origin: "harvest", growOut: "G6" })))).toEqual(["growOut"]);
  expect(Object.keys(refusalsOf(await record({ origin: "harvest", growOut: "G7" })))).toEqual(["growOut"]);
  expect(Object.keys(refusalsOf(await record({ origin: "harvest", founderLines: "one" })))).toEqual([
    "growOut",
    "founderLines",
  ]);
});

test("an amount needs its day", async () => {
  expect(refusalsOf(await record({ amount: "20" }))).toEqual({
    amountOn: "nothing stands here; write when it was weighed or came in",
  });
});

test("a reader records nothing", async () => {
  const input = granted(parseForm(recordLotSchema("north"), typed));
  expect((await recordLot(db, { ...owner, role: "reader" }, input)).ok).toBe(false);
});

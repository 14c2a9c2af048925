import { beforeEach, describe, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { correctGrowOut } from "@/lib/registry/grow-outs/correct-grow-out";
import { proposedName } from "@/lib/registry/grow-outs/name-of-grow-out";
import { planGrowOut } from "@/lib/registry/grow-outs/plan-grow-out";
import { sowGrowOut } from "@/lib/registry/grow-outs/sow-grow-out";
import { balanceOf } from "@/lib/registry/ledger/balance";
import type { CrossRole, PlanGrowOutInput } from "@/lib/schemas/grow-outs/plan-grow-out";
import type { SownPart } from "@/lib/schemas/grow-outs/sow-grow-out";
import { defaultSettings } from "@/lib/schemas/settings";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { aLot, anEntry, aTest, aVariety } from "../lots/lots-in-tests";
import { on } from "./a-grow-out";

const owner = ownerHere();
const question = { settings: defaultSettings, today: "2027-05-12" };

const plan = (
  name: string,
  lots: readonly (readonly [string, number | null])[],
  more: Partial<PlanGrowOutInput> = {},
) => ({
  name,
  purpose: "renew" as const,
  steward: null,
  parents: lots.map(([lot, share]) => ({ lot, share })),
  plantsPlanned: 20,
  seedParentsPlanned: 15,
  plot: null,
  newPlot: null,
  place: null,
  note: null,
  ...more,
});

const part = (lot: string, amount: number | null, unit: SownPart["unit"] = "g"): SownPart => ({ lot, amount, unit });
const sowing = (parts: SownPart[], override: string | null = null) => ({
  on: on("2027-05-12"),
  parts,
  override,
  note: null,
});

interface Refused {
  readonly ok: boolean;
  readonly refusals?: readonly { code: string; path: readonly (string | number)[]; sentence: string }[];
}
const refusalsOf = (outcome: Refused) => (outcome.refusals ?? []).map(({ code, path }) => [code, path.join(".")]);
const sentences = (outcome: Refused) => (outcome.refusals ?? []).map((each) => each.sentence);

onEveryEngine("a grow-out", (fresh) => {
  let db: Database;
  let variety: string;
  let old: string;
  let young: string;

  beforeEach(async () => {
    db = await fresh();
    variety = await aVariety(db, "Hollow Broad");
    old = await aLot(db, variety, { number: "Hol 1", year: "2021", thousandSeedGrams: 500 });
    young = await aLot(db, variety, { number: "Hol 2", year: "2025", thousandSeedGrams: 400 });
    await anEntry(db, old, "weighed", 300, "2027-01-10");
    await anEntry(db, young, "weighed", 400, "2027-01-10");
  }, 60_000);

  const planned = async (lots: readonly (readonly [string, number | null])[], name = "Hollow 2027") =>
    granted(await planGrowOut(db, owner, variety, plan(name, lots))).value.growOutId;
  const sow = (id: string, parts: SownPart[], override: string | null = null) =>
    sowGrowOut(db, owner, id, sowing(parts, override), question);
  const held = async (lotId: string) => {
    const lot = await db.read.lot.findUniqueOrThrow({ where: { id: lotId }, include: { ledger: true } });
    return balanceOf(lot.ledger, lot.thousandSeedGrams).grams;
  };
  const parentsOf = async (growOutId: string) =>
    (await db.read.growOutParent.findMany({ where: { growOutId }, orderBy: { lot: { number: "asc" } } })).map(
      ({ lotId, share }) => [lotId, share],
    );

  it("is planned with its lots and plot, moves no seed, and is taken back as a mistaken entry", async () => {
    const input = plan(
      "Hollow 2027",
      [
        [old, 0.25],
        [young, 0.75],
      ],
      { newPlot: "Brook strip", place: "Nether Cray" },
    );
    const done = granted(await planGrowOut(db, owner, variety, input));
    const id = done.value.growOutId;
    expect(await db.read.growOut.findUniqueOrThrow({ where: { id } })).toMatchObject({
      name: "Hollow 2027",
      purpose: "renew",
      plantsPlanned: 20,
      seedParentsPlanned: 15,
      sown: null,
    });
    expect(await parentsOf(id)).toEqual([
      [old, 0.25],
      [young, 0.75],
    ]);
    expect(await db.read.growOutPlot.count({ where: { growOutId: id, plot: { name: "Brook strip" } } })).toBe(1);
    expect([await held(old), await held(young)]).toEqual([300, 400]);
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect(await db.read.growOut.count()).toBe(0);
  }, 60_000);

  it("is sown in one change set: each ledger, its day, the seeds sown", async () => {
    const id = await planned([
      [old, 0.25],
      [young, 0.75],
    ]);
    const done = granted(await sow(id, [part(old, 5), part(young, 30, "seeds")]));
    // 5 g at 500 g a thousand are 10 seeds; 30 seeds at 400 g a thousand are 12 g.
    expect(await db.read.growOut.findUniqueOrThrow({ where: { id } })).toMatchObject({
      sown: "2027-05-12",
      seedsSown: 40,
    });
    expect([await held(old), await held(young)]).toEqual([295, 388]);
    const entries = await db.read.ledgerEntry.findMany({ where: { kind: "sown" }, orderBy: { id: "asc" } });
    expect(entries.map(({ lotId, other, amount, unit }) => [lotId, other, amount, unit])).toEqual([
      [old, "Hollow 2027", 5, "g"],
      [young, "Hollow 2027", 30, "seeds"],
    ]);
    const changes = await db.read.change.findMany({ where: { changeSetId: done.changeSetId ?? "" } });
    expect(changes.map((each) => each.tableName).sort()).toEqual(["GrowOut", "LedgerEntry", "LedgerEntry"]);
  }, 60_000);

  it("is not sown at all where one jar holds too little, and says the most", async () => {
    const id = await planned([
      [old, 0.5],
      [young, 0.5],
    ]);
    const outcome = await sow(id, [part(old, 10), part(young, 500)]);
    expect(refusalsOf(outcome)).toEqual([["balance-below-zero", "parts.1.amount"]]);
    expect(sentences(outcome)[0]).toContain("write at most 400 g");
    expect([await held(old), await held(young)]).toEqual([300, 400]);
    expect(await db.read.ledgerEntry.count({ where: { kind: "sown" } })).toBe(0);
  }, 60_000);

  it("lets a lot of the plan go of which nothing was sown, and asks for one that is passed over", async () => {
    const id = await planned([
      [old, 0.2],
      [young, 0.8],
    ]);
    expect(refusalsOf(await sow(id, [part(young, 10)]))).toEqual([["missing", "parts"]]);
    expect(refusalsOf(await sow(id, [part(old, null), part(young, 10)]))).toEqual([["missing", "parts.0.amount"]]);
    expect(refusalsOf(await sow(id, [part(old, 0), part(young, 0)]))).toEqual([["nothing-sown", "parts.0.amount"]]);
    granted(await sow(id, [part(old, 0), part(young, 10)]));
    expect(await parentsOf(id)).toEqual([[young, 1]]);
  }, 60_000);

  it("takes a lot that was not in the plan; then nobody knows the shares until somebody tells them", async () => {
    const id = await planned([[old, null]]);
    expect(await parentsOf(id)).toEqual([[old, 1]]);
    granted(await sow(id, [part(old, 10), part(young, 10)]));
    expect(await parentsOf(id)).toEqual([
      [old, null],
      [young, null],
    ]);
  }, 60_000);

  it("is sown a second time: the first day stays, the seeds add up", async () => {
    const id = await planned([[young, null]]);
    granted(await sow(id, [part(young, 20, "seeds")]));
    const later = { ...sowing([part(young, 5, "seeds")]), on: on("2027-06-01") };
    granted(await sowGrowOut(db, owner, id, later, question));
    expect(await db.read.growOut.findUniqueOrThrow({ where: { id } })).toMatchObject({
      sown: "2027-05-12",
      seedsSown: 25,
    });
    // 25 seeds at 400 g a thousand are 10 g.
    expect(await held(young)).toBe(390);
  }, 60_000);

  it("is sown from a lot on hold, in quarantine or of unknown treatment only with a reason, which is kept", async () => {
    const id = await planned([[old, null]]);
    await db.write.lot.update({ where: { id: old }, data: { status: "hold", statusReason: "a cross is suspected" } });
    const outcome = await sow(id, [part(old, 5)]);
    expect(refusalsOf(outcome)).toEqual([["on-hold", "override"]]);
    await db.write.lot.update({ where: { id: old }, data: { status: "quarantine" } });
    expect(refusalsOf(await sow(id, [part(old, 5)]))).toEqual([["in-quarantine", "override"]]);
    await db.write.lot.update({ where: { id: old }, data: { status: null, treatment: "unknown" } });
    expect(refusalsOf(await sow(id, [part(old, 5)]))).toEqual([["treatment-unknown", "override"]]);
    const done = granted(await sow(id, [part(old, 5)], "it is grown apart to see what it is"));
    const set = await db.read.changeSet.findUniqueOrThrow({ where: { id: done.changeSetId ?? "" } });
    expect(set.reason).toContain("it is grown apart to see what it is");
  }, 60_000);

  it("eats into the reserve only with a reason", async () => {
    await aTest(db, young, "T1", "2027-02-01", 50, 45);
    // Broad bean: the floor of its crop is set to 20 plants here, so that the reserve is that of 20 plants.
    await db.write.variety.update({ where: { id: variety }, data: { plantsWanted: 20 } });
    const id = await planned([[young, null]]);
    // 400 g at 400 g a thousand are 1,000 seeds. Reserve: 2 sowings of S + 2 tests of 50 + 50 = 2·S + 150, S < 50 for 20 plants.
    granted(await sow(id, [part(young, 700, "seeds")]));
    const outcome = await sow(id, [part(young, 150, "seeds")]);
    expect(refusalsOf(outcome)).toEqual([["reserve-touched", "override"]]);
    expect(sentences(outcome)[0]).toContain("150 seeds");
    granted(await sow(id, [part(young, 150, "seeds")], "the last year failed, and the circle has none"));
    expect(await held(young)).toBe(60);
  }, 60_000);

  it("can be a cross: each lot gives seed or pollen, and lots of both are needed", async () => {
    const crossed = (one: CrossRole | null, other: CrossRole | null, name: string) => {
      const parents = [
        { lot: old, share: 0.5, role: one },
        { lot: young, share: 0.5, role: other },
      ];
      return planGrowOut(db, owner, variety, plan(name, [], { parents }));
    };
    const growOutId = granted(await crossed("seed parent", "pollen parent", "Cross")).value.growOutId;
    const rows = await db.read.growOutParent.findMany({ where: { growOutId }, orderBy: { id: "asc" } });
    expect(rows.map(({ lotId, role }) => [lotId, role])).toEqual([
      [old, "seed parent"],
      [young, "pollen parent"],
    ]);
    expect(refusalsOf(await crossed("seed parent", null, "Half told"))).toEqual([["side-missing", "parents.1.role"]]);
    expect(refusalsOf(await crossed("seed parent", "seed parent", "One side"))).toEqual([
      ["side-missing", "parents.0.role"],
    ]);
    const sown = granted(await sowGrowOut(db, owner, growOutId, sowing([part(old, 20), part(young, 20)]), question));
    expect(sown.value).toBeDefined();
    expect(await db.read.growOutParent.count({ where: { growOutId, role: { not: null } } })).toBe(2);
  });

  it("refuses parents of another crop, twice the same, shares that are not all, and a name that is taken", async () => {
    const pea = await aLot(db, await aVariety(db, "Mere Pea", "pea"), { number: "Mere 1" });
    const refused = async (lots: readonly (readonly [string, number | null])[], more: Partial<PlanGrowOutInput> = {}) =>
      refusalsOf(await planGrowOut(db, owner, variety, plan("Hollow 2027", lots, more)));
    expect(await refused([[pea, null]])).toEqual([["another-crop", "parents.0.lot"]]);
    expect(await refused([])).toEqual([["missing", "parents.0.lot"]]);
    expect(
      await refused([
        [old, 0.5],
        [old, 0.5],
      ]),
    ).toEqual([["parent-twice", "parents.1.lot"]]);
    expect(
      await refused([
        [old, 0.5],
        [young, 0.4],
      ]),
    ).toEqual([["shares-not-one", "parents.0.share"]]);
    expect(await refused([[old, null]], { seedParentsPlanned: 21 })).toEqual([
      ["more-parents-than-plants", "seedParentsPlanned"],
    ]);
    await planned([[old, null]]);
    expect(await refused([[young, null]], { name: "hollow  2027" })).toEqual([["name-taken", "name"]]);
    expect(await proposedName(db.read, "Hollow", "2026-11-27", "north")).toBe("Hollow 2027 b");
  }, 60_000);

  it("may be a cross with another variety of the crop, and says so", async () => {
    const other = await aLot(db, await aVariety(db, "Mill Broad"), { number: "Mill 1" });
    const lots = [
      [old, 0.5],
      [other, 0.5],
    ] as const;
    const done = granted(await planGrowOut(db, owner, variety, plan("Cross 2027", lots)));
    expect(done.value.warnings.map(({ code }) => code)).toEqual(["cross"]);
  }, 60_000);

  it("is never its own ancestor, by however many steps", async () => {
    const id = await planned([[old, null]]);
    const own = await aLot(db, variety, { number: "Hol 3", kind: "harvest", growOutId: id });
    const next = granted(await planGrowOut(db, owner, variety, plan("Hollow 2028", [[own, null]]))).value.growOutId;
    const far = await aLot(db, variety, { number: "Hol 4", kind: "harvest", growOutId: next });
    const blend = await aLot(db, variety, { number: "Hol 5", kind: "blend" });
    await db.write.lotParent.create({
      data: { id: "00000000-0000-7000-8000-000000000001", lotId: blend, parentLotId: far },
    });
    const put = (lot: string) =>
      correctGrowOut(db, owner, id, {
        ...plan("Hollow 2027", [[lot, null]]),
        sown: null,
        seedsSown: null,
        reason: null,
      });
    for (const lot of [own, far, blend])
      expect(refusalsOf(await put(lot))).toEqual([["own-ancestor", "parents.0.lot"]]);
    granted(await put(young));
    expect(await parentsOf(id)).toEqual([[young, 1]]);
  }, 60_000);

  it("is put right freely before it is sown; afterwards what was written is replaced with a reason", async () => {
    const id = await planned([[young, null]]);
    const right = (more: object) =>
      correctGrowOut(db, owner, id, {
        ...plan("Hollow 2027", [[young, null]]),
        ...{ sown: null, seedsSown: null, reason: null },
        ...more,
      });
    granted(await right({ plantsPlanned: 30 }));
    granted(await sow(id, [part(young, 20, "seeds")]));
    const sown = { plantsPlanned: 30, sown: on("2027-05-12"), seedsSown: 20 };
    granted(await right({ ...sown, note: "rain" }));
    expect(refusalsOf(await right({ ...sown, note: "rain", seedsSown: 22 }))).toEqual([["reason-missing", "reason"]]);
    granted(await right({ ...sown, note: "rain", seedsSown: 22, reason: "two fell beside" }));
    // The jar's ledger stays as it was: 20 seeds at 400 g a thousand are 8 g.
    expect(await held(young)).toBe(392);
  }, 60_000);
});

describe("the year of a plan", () => {
  it("is the next one from autumn on, in both halves of the world", async () => {
    const { yearOfPlan } = await import("@/lib/registry/grow-outs/name-of-grow-out");
    expect([yearOfPlan("2026-08-31", "north"), yearOfPlan("2026-09-01", "north")]).toEqual([2026, 2027]);
    expect([yearOfPlan("2026-02-28", "south"), yearOfPlan("2026-09-01", "south")]).toEqual([2026, 2026]);
  });
});

import { uuidv7 } from "uuidv7";
import { beforeEach, expect, test } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { figuresOfVariety } from "@/lib/registry/figures/read-figures";
import { balanceOf } from "@/lib/registry/ledger/balance";
import { blendLots } from "@/lib/registry/lots/blend-lots";
import type { BlendInput } from "@/lib/schemas/lots/blend-lots";
import { parseDate } from "@/lib/science/dates/parse-date";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aLot, anEntry, aSteward, aTest, aVariety } from "./lots-in-tests";

const owner = ownerHere();

onEveryEngine("a blend", (fresh) => {
  let db: Database;
  let varietyId: string;
  let old: string;
  let young: string;

  beforeEach(async () => {
    db = await fresh();
    const oda = await aSteward(db, "Oda Fenlight");
    varietyId = await aVariety(db);
    const common = { holderId: oda, treatment: "none" };
    old = await aLot(db, varietyId, { number: "Ham 3", year: "2015", thousandSeedGrams: 500, ...common });
    young = await aLot(db, varietyId, { number: "Ham 9", year: "2024", thousandSeedGrams: 400, ...common });
    await anEntry(db, old, "harvested", 100, "2015-10-10");
    await anEntry(db, young, "harvested", 200, "2024-10-10");
    await aTest(db, old, "T old", "2025-02-01", 50, 25);
    await aTest(db, young, "T young", "2025-02-01", 50, 45);
  });

  const part = (lot: string, amount: number, more: Partial<BlendInput["parts"][number]> = {}) => ({
    ...{ lot, amount, unit: "g" as const, living: null, ...more },
  });

  const blend = (more: Partial<BlendInput> = {}) =>
    blendLots(db, owner, {
      parts: [part(old, 40), part(young, 32)],
      number: "Ham 10",
      holder: "Oda Fenlight",
      newHolder: null,
      on: granted(parseDate("2026-03-01")),
      reason: "the old lot for breadth, the young one for vigour",
      override: null,
      notes: null,
      ...more,
    });

  const faults = (outcome: Awaited<ReturnType<typeof blend>>) =>
    outcome.ok ? [] : outcome.refusals.map((each) => [each.code, each.path.join(".")]);

  test("all ledgers say so, and the shares are those of the living seeds", async () => {
    const { value } = granted(await blend());
    expect(value.emptied).toEqual([]);
    const made = await db.read.lot.findUniqueOrThrow({
      where: { id: value.lotId },
      include: { ledger: { orderBy: { amount: "asc" } }, parents: { orderBy: { share: "asc" } }, making: true },
    });
    // 40 g at 500 g a thousand are 80 seeds, 40 of them alive; 32 g at 400 are 80 seeds, 72 alive: 40/112 and 72/112.
    expect(made.parents.map((each) => each.parentLotId)).toEqual([old, young]);
    expect(made.parents[0]?.share).toBeCloseTo(40 / 112, 12);
    expect(made.parents[1]?.share).toBeCloseTo(72 / 112, 12);
    // 72 g of 160 seeds: 450 g a thousand.
    expect(made).toMatchObject({ kind: "blend", year: "2015/2024", treatment: "none", status: null });
    expect(made.thousandSeedGrams).toBeCloseTo(450, 9);
    expect(made.yearWords).toBe("harvests of 2015, 2024, mixed 2026-03-01");
    expect(made.making).toMatchObject({
      kind: "blend",
      on: "2026-03-01",
      reason: "the old lot for breadth, the young one for vigour",
    });
    expect(made.ledger.map((each) => [each.kind, each.amount, each.other, each.otherLotId])).toEqual([
      ["blended-in", 32, "Ham 9", young],
      ["blended-in", 40, "Ham 3", old],
    ]);
    const parted = await db.read.lot.findUniqueOrThrow({ where: { id: old }, include: { ledger: true } });
    expect(parted.ledger.find((each) => each.kind === "blended-out")).toMatchObject({
      amount: 40,
      other: "Ham 10",
      otherLotId: made.id,
    });
    expect(balanceOf(parted.ledger, 500).grams).toBe(60);
    expect(balanceOf(made.ledger, made.thousandSeedGrams).grams).toBe(72);
    const figures = await figuresOfVariety(db, varietyId);
    // two founders that nobody knows to be kin, of one line each as far as θ goes: none of it is lost
    expect(figures.get(value.lotId)?.founders).toEqual(["Ham 3", "Ham 9"]);
  });

  test("seeds are weighed out by each lot's own weight, and a jar that is emptied is named", async () => {
    const seeds = { unit: "seeds" as const };
    const { value } = granted(await blend({ parts: [part(old, 200, seeds), part(young, 100, seeds)] }));
    expect(value.emptied).toEqual(["Ham 3"]);
    const made = await db.read.lot.findUniqueOrThrow({ where: { id: value.lotId }, include: { ledger: true } });
    expect(balanceOf(made.ledger, made.thousandSeedGrams).grams).toBeCloseTo(140, 9);
    expect(made.thousandSeedGrams).toBeCloseTo(140 / 0.3, 9);
  });

  test("lots of another variety or crop, one lot twice and a single lot are no blend", async () => {
    const other = await aLot(db, await aVariety(db, "Well Garden"), { number: "Wel 1" });
    const maize = await aLot(db, await aVariety(db, "Rain Flint", "maize-field"), { number: "Rai 1" });
    expect(faults(await blend({ parts: [part(old, 1), part(other, 1)] }))).toEqual([["other-variety", "parts.1.lot"]]);
    expect(faults(await blend({ parts: [part(old, 1), part(maize, 1)] }))).toEqual([["other-crop", "parts.1.lot"]]);
    expect(faults(await blend({ parts: [part(old, 1), part(old, 1)] }))).toEqual([["lot-twice", "parts.1.lot"]]);
    expect(faults(await blend({ parts: [part(old, 1)] }))).toEqual([["too-few-lots", "parts"]]);
    expect(faults(await blend({ parts: [part(old, 1), part(uuidv7(), 1)] }))).toEqual([["unknown-lot", "parts.1.lot"]]);
  });

  test("a crop kept by division is not mixed", async () => {
    const garlic = await aVariety(db, "Stone Clove", "garlic");
    const lots = [await aLot(db, garlic, { number: "Sto 1" }), await aLot(db, garlic, { number: "Sto 2" })];
    expect(faults(await blend({ parts: lots.map((lot) => part(lot, 10)) }))).toEqual([["kept-by-division", "parts"]]);
  });

  test("what a jar does not hold, what has no seed weight, and a number that is taken are refused together", async () => {
    await db.write.lot.update({ where: { id: young }, data: { thousandSeedGrams: null } });
    expect(faults(await blend({ parts: [part(old, 140), part(young, 32)], number: "ham 3" }))).toEqual([
      ["no-seed-weight", "parts.1.amount"],
      ["balance-below-zero", "parts.0.amount"],
      ["number-taken", "number"],
    ]);
    expect(await db.read.lot.count()).toBe(2);
    expect(await db.read.ledgerEntry.count()).toBe(2);
  });

  test("an untested lot is refused unless a person says why and what share lives; both are kept", async () => {
    await db.write.testCount.deleteMany();
    await aTest(db, old, "T again", "2025-03-01", 50, 25);
    expect(faults(await blend())).toEqual([
      ["untested", "override"],
      ["untested", "parts.1.living"],
    ]);
    const parts = [part(old, 40), part(young, 32, { living: 0.75 })];
    const { value } = granted(await blend({ parts, override: "grown last year, sound and dry" }));
    const made = await db.read.lot.findUniqueOrThrow({
      where: { id: value.lotId },
      include: { parents: true, making: true },
    });
    // 40 of 80 seeds, and 60 of 80
    expect(made.parents.find((each) => each.parentLotId === young)?.share).toBeCloseTo(0.6, 12);
    expect(made.making?.reason).toBe(
      "the old lot for breadth, the young one for vigour; although lot Ham 9 was never tested: nobody knows how much of it lives: " +
        "grown last year, sound and dry; of lot Ham 9, untested, 75 % were taken to live",
    );
  });

  test("a lot that nothing came up of adds nothing, and a guess beside a test is refused", async () => {
    await aTest(db, old, "T last", "2026-02-01", 50, 0);
    expect(faults(await blend())).toEqual([["nothing-lives", "parts.0.amount"]]);
    expect(faults(await blend({ parts: [part(young, 10), part(old, 10, { living: 0.5 })] }))).toEqual([
      ["tested", "parts.1.living"],
    ]);
  });

  test.each([
    ["hold", "on-hold"],
    ["quarantine", "in-quarantine"],
  ] as const)("a lot in %s goes in only with a reason, and the blend stands so too", async (status, code) => {
    await db.write.lot.update({ where: { id: old }, data: { status, statusReason: "yellow ears in 2024" } });
    expect(faults(await blend())).toEqual([[code, "override"]]);
    const { value } = granted(await blend({ override: "the yellow ears came of the sack, not of the jar" }));
    const made = await db.read.lot.findUniqueOrThrow({ where: { id: value.lotId }, include: { making: true } });
    expect(made).toMatchObject({ status, statusReason: "lot Ham 3 in it stands so: yellow ears in 2024" });
    expect(made.making?.reason).toContain("(yellow ears in 2024): the yellow ears came of the sack, not of the jar");
  });

  test.each([
    [{ treatment: "chemical", treatmentSubstance: "a fungicide" }, "treated"],
    [{ status: "dead" }, "dead"],
    [{ status: "discarded" }, "discarded"],
    [{ status: "finished" }, "no-seed-left"],
    [{ status: "not for seed" }, "not-for-seed"],
  ])("%o never goes in, whatever the reason", async (data, code) => {
    await db.write.lot.update({ where: { id: old }, data });
    expect(faults(await blend({ override: "all the same" }))).toEqual([[code, "parts.0.lot"]]);
  });

  test("unknown treatment, also of seed from outside of which nothing is said, needs a reason", async () => {
    await db.write.lot.update({ where: { id: old }, data: { treatment: "unknown" } });
    await db.write.lot.update({ where: { id: young }, data: { treatment: null } });
    expect(faults(await blend())).toEqual([
      ["treatment-unknown", "override"],
      ["treatment-unknown", "override"],
    ]);
    const { value } = granted(await blend({ override: "no dye on it, from gardens only" }));
    expect((await db.read.lot.findUniqueOrThrow({ where: { id: value.lotId } })).treatment).toBe("unknown");
  });

  test("an open warning, and strains that are only said to be one, need a reason", async () => {
    await db.write.warning.create({
      data: { id: uuidv7(), lotId: young, reason: "suspected cross", on: "2025-08-01" },
    });
    expect(faults(await blend())).toEqual([["warned", "override"]]);
    await db.write.warning.updateMany({ data: { closedOn: "2025-09-01" } });
    const strain = { id: uuidv7(), varietyId, name: "Rin’s keeping", nameKey: "rin's keeping" };
    await db.write.strain.create({ data: strain });
    await db.write.lot.update({ where: { id: young }, data: { strainId: strain.id } });
    expect(faults(await blend())).toEqual([["strains-not-shown-to-be-one", "override"]]);
    await db.write.strain.update({ where: { id: strain.id }, data: { relation: "same" } });
    const { value } = granted(await blend());
    expect((await db.read.lot.findUniqueOrThrow({ where: { id: value.lotId } })).strainId).toBeNull();
  });

  test("taken back, the record is as it was; a blend that was split since is not taken back", async () => {
    const done = granted(await blend());
    granted(await undoChangeSet(db, owner, done.changeSetId ?? ""));
    expect(await db.read.lot.count()).toBe(2);
    expect(await db.read.ledgerEntry.count()).toBe(2);
    expect(await db.read.lotMaking.count()).toBe(0);
    const again = granted(await blend());
    const child = await aLot(db, varietyId, { number: "Ham 11", kind: "split" });
    await db.write.lotParent.create({ data: { id: uuidv7(), lotId: child, parentLotId: again.value.lotId, share: 1 } });
    expect((await undoChangeSet(db, owner, again.changeSetId ?? "")).ok).toBe(false);
  });
});

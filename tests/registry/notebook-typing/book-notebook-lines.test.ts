import { describe, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { figuresOfVariety } from "@/lib/registry/figures/read-figures";
import { bookNotebookLines } from "@/lib/registry/notebook-typing/book-notebook-lines";
import { standingLotRef } from "@/lib/schemas/notebook-typing/notebook-booking";
import type { Outcome } from "@/lib/science/outcome";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { amount, booking, growOut, lot, told, twoYears } from "./bookings";

const owner = ownerHere();
const codes = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.refusals.map((each) => each.code));
const paths = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.refusals.map((each) => each.path.join(".")));

const lotOf = (db: Database, number: string) =>
  db.read.lot.findFirstOrThrow({
    where: { number },
    include: { parents: true, stories: true, observations: true, growOut: true },
  });

describe("lines of a notebook that are booked", () => {
  it("make lots, grow-outs and ledger lines in one change set, which one undo takes back whole", async () => {
    const db = await emptyRegistry();
    const before = await db.read.changeSet.count();
    const done = granted(await bookNotebookLines(db, owner, twoYears()));
    expect(done.value.made).toEqual({ lots: 3, growOuts: 2, entries: 1, tests: 0 });
    expect(await db.read.changeSet.count()).toBe(before + 1);
    const set = await db.read.changeSet.findUniqueOrThrow({ where: { id: done.changeSetId as string } });
    expect(set.title).toBe("Notebook of Hollow Pea: 3 lines");
    granted(await undoChangeSet(db, owner, done.changeSetId as string));
    expect([await db.read.variety.count(), await db.read.lot.count(), await db.read.observation.count()]).toEqual([
      0, 0, 0,
    ]);
  });

  it("keep every line's words, and what came of the jar as the story of its lot", async () => {
    const db = await emptyRegistry();
    granted(await bookNotebookLines(db, owner, twoYears()));
    const jar = await lotOf(db, "Hollow 1");
    expect([jar.kind, jar.year, jar.yearWords, jar.origin]).toEqual(["founder", null, "1994 or before", "received"]);
    expect(jar.stories.map((story) => story.words)).toEqual(["from my aunt's jar"]);
    const told = await db.read.observation.findMany({ where: { words: { startsWith: "1994, from" } } });
    expect(told[0]?.words).toBe("1994, from my aunt's jar, about 40 plants, kept from 12, came up badly");
    const gap = await db.read.story.findFirstOrThrow({ where: { words: "1997 nothing sown" } });
    expect([gap.about, gap.aboutLast]).toEqual(["1997", "1997-12-31"]);
  });

  it("keep about as a value so marked beside its words, and leave unknown counts unknown", async () => {
    const db = await emptyRegistry();
    granted(await bookNotebookLines(db, owner, twoYears()));
    const made = await db.read.growOut.findFirstOrThrow({
      where: { name: "Hollow Pea 1994" },
      include: { observations: true },
    });
    expect([made.plantsStanding, made.seedParents, made.seedsSown, made.roguedBeforePollen, made.seedShares]).toEqual([
      40,
      12,
      null,
      null,
      null,
    ]);
    const about = made.observations.find((each) => each.unit === "plants standing");
    expect([about?.words, about?.value, about?.howSure]).toEqual(["about 40", 40, "about"]);
  });

  it("give figures where the counts are there: 60 of 80 kept, equal shares", async () => {
    const db = await emptyRegistry();
    const { value } = granted(await bookNotebookLines(db, owner, twoYears()));
    const figures = await figuresOfVariety(db, value.varietyId);
    const last = figures.get((await lotOf(db, "Hollow 3")).id);
    expect([last?.gramsOnHand, last?.generations, last?.founders]).toEqual([
      350,
      2,
      [(await lotOf(db, "Hollow 1")).number],
    ]);
    // The 1994 shares are not known, so what descends from it has no diversity.
    expect([last?.effectiveSize, last?.diversityRetained]).toEqual([null, null]);
  });

  it("keep a span and a count of ears in words, not as numbers of plants", async () => {
    const db = await emptyRegistry();
    const span = told(null, { words: "30-40", low: 30, high: 40 });
    const ears = told(40, { words: "40 ears" });
    const made = growOut({
      ref: "g",
      line: 0,
      year: "198X",
      parents: [{ lot: "old", share: null }],
      plantsStanding: span,
      seedParents: ears,
      seedParentsCounted: "ears",
      roguedUntimed: told(0, { words: "none" }),
      emerged: told(55),
      bulked: "all together",
    });
    const lots = [
      lot({ ref: "old", line: 0, number: "Old 1", kind: "founder", assumed: true }),
      lot({ ref: "new", line: 0, number: "Old 2", kind: "harvest", year: "198X", growOut: "g" }),
    ];
    const lines = [{ words: "in the eighties, 30-40 plants, 40 ears", year: "198X", kind: "grow-out" as const }];
    granted(await bookNotebookLines(db, owner, booking({ lines, lots, growOuts: [made] })));
    const stored = await db.read.growOut.findFirstOrThrow({
      include: { observations: true, stageCounts: true, roguePasses: true },
    });
    expect([stored.plantsStanding, stored.seedParents, stored.sownFirst]).toEqual([null, null, "1980-01-01"]);
    const notes = stored.observations.map((each) => [each.words, each.unit, each.value, each.howSure]);
    expect(notes).toContainEqual(["30-40", "plants standing", null, "between 30 and 40"]);
    expect(notes).toContainEqual(["40 ears", "ears kept for seed", 40, null]);
    expect(notes).toContainEqual(["seed taken: all together", null, null, null]);
    expect(stored.stageCounts.map((count) => [count.stage, count.plants])).toEqual([["up", 55]]);
    // Looked and found none is a rogue pass of 0, before or after pollen not said.
    expect(stored.roguePasses.map((pass) => [pass.pulled, pass.timing])).toEqual([[0, null]]);
    expect((await lotOf(db, "Old 1")).origin).toBe("unknown before here");
  });

  it("book a test that was counted, and leave one in words alone in words", async () => {
    const db = await emptyRegistry();
    const tests = [
      { line: 1, lot: "1996", on: "1996", up: told(18), of: told(20), days: null, words: "18 of 20 came up" },
      { line: 1, lot: "1996", on: "1996", up: null, of: null, days: null, words: "tested about 90 %" },
    ];
    const { value } = granted(await bookNotebookLines(db, owner, twoYears({ tests })));
    const test = await db.read.germinationTest.findFirstOrThrow({
      include: { replicates: { include: { counts: true } } },
    });
    expect([test.name, test.basis, test.replicates[0]?.sown, test.replicates[0]?.counts[0]?.normal]).toEqual([
      "Hollow 3 test 1",
      null,
      20,
      18,
    ]);
    expect(value.keptInWords).toEqual([
      { line: 1, words: "tested about 90 %", why: "how many of how many came up is not said" },
    ]);
  });

  it("take seed from a jar only as far as the lines say that it was there; what was given is told of all the same", async () => {
    const db = await emptyRegistry();
    const base = twoYears();
    const entries = [
      ...base.entries,
      {
        line: 1,
        lot: "1996",
        on: "1997",
        kind: "given" as const,
        amount: amount(50),
        other: "Perrin",
        manner: "gift" as const,
      },
      {
        line: 1,
        lot: "1994",
        on: "1996",
        kind: "sown" as const,
        amount: amount(20, "g", { words: "20 g" }),
        other: null,
        manner: null,
      },
      {
        line: 1,
        lot: "1996",
        on: "1998",
        kind: "given" as const,
        amount: amount(null, null, { words: "half of it" }),
        other: "Odalind",
        manner: "gift" as const,
      },
      {
        line: 1,
        lot: "1996",
        on: "1999",
        kind: "given" as const,
        amount: amount(400, "g", { words: "400 g" }),
        other: "Odalind",
        manner: "loan" as const,
      },
    ];
    const { value } = granted(await bookNotebookLines(db, owner, twoYears({ entries })));
    const figures = await figuresOfVariety(db, value.varietyId);
    expect(figures.get((await lotOf(db, "Hollow 3")).id)?.gramsOnHand).toBe(300);
    expect(figures.get((await lotOf(db, "Hollow 2")).id)?.gramsOnHand).toBeNull();
    expect(value.keptInWords.map((kept) => [kept.words, kept.why])).toEqual([
      ["20 g", "how much lot Hollow 2 held is not known"],
      ["half of it", "“half of it” is no amount that can be booked"],
      ["400 g", "lot Hollow 3 did not hold so much, by these lines"],
    ]);
    const transfers = await db.read.transfer.findMany({ orderBy: { on: "asc" } });
    expect(transfers.map((transfer) => [transfer.toWords, transfer.kind, transfer.amount])).toEqual([
      ["Perrin", "gift", 50],
      ["Odalind", "gift", null],
      ["Odalind", "loan", null],
    ]);
    const words = await db.read.observation.findMany({ where: { words: { contains: "20 g" } } });
    expect(words.map((each) => [each.words, each.value, each.unit])).toContainEqual(["sown, 20 g", 20, "g"]);
  });

  it("go on from a lot that stands already, also of another variety of the crop", async () => {
    const db = await emptyRegistry();
    const first = granted(await bookNotebookLines(db, owner, twoYears()));
    const stands = standingLotRef((await lotOf(db, "Hollow 3")).id);
    const more = booking({
      variety: { id: first.value.varietyId },
      lines: [{ words: "2001, 30 plants of the 1996 seed", year: "2001", kind: "grow-out" }],
      lots: [lot({ ref: "x", line: 0, number: "Hollow 4", kind: "harvest", year: "2001", growOut: "g" })],
      growOuts: [
        growOut({ ref: "g", line: 0, year: "2001", parents: [{ lot: stands, share: null }], plantsStanding: told(30) }),
      ],
    });
    granted(await bookNotebookLines(db, owner, more));
    expect((await lotOf(db, "Hollow 4")).growOut?.name).toBe("Hollow Pea 2001");
    expect(await db.read.variety.count()).toBe(1);
  });

  it("name two grow-outs of one year apart", async () => {
    const db = await emptyRegistry();
    const made = (ref: string) => growOut({ ref, line: 0, year: "1994", parents: [{ lot: "old", share: null }] });
    const lots = [lot({ ref: "old", line: 0, number: "Old 1", kind: "founder", assumed: true })];
    granted(await bookNotebookLines(db, owner, booking({ lots, growOuts: [made("a"), made("b")] })));
    const names = await db.read.growOut.findMany({ select: { name: true }, orderBy: { id: "asc" } });
    expect(names.map((each) => each.name)).toEqual(["Hollow Pea 1994", "Hollow Pea 1994 b"]);
  });
});

describe("lines that cannot be booked", () => {
  it("leave nothing behind, and say every fault at its field", async () => {
    const db = await emptyRegistry();
    granted(await bookNotebookLines(db, owner, twoYears()));
    const again = twoYears({ variety: { name: "Other Pea", crop: "pea", ownCrop: false } });
    const outcome = await bookNotebookLines(db, owner, again);
    expect(codes(outcome)).toEqual(["number-taken", "number-taken", "number-taken"]);
    expect(paths(outcome)[1]).toBe("lots.1.number");
    expect(await db.read.variety.count()).toBe(1);
  });

  it("are refused for a name that is taken, a crop that is none, and a holder whom nobody knows", async () => {
    const db = await emptyRegistry();
    granted(await bookNotebookLines(db, owner, twoYears()));
    const taken = await bookNotebookLines(
      db,
      owner,
      booking({ variety: { name: "hollow pea", crop: "paa", ownCrop: false }, holder: "Perrin" }),
    );
    expect(codes(taken)).toEqual(["name-taken", "unknown-crop", "unknown-steward"]);
    expect(paths(taken)).toEqual(["variety.name", "variety.crop", "holder"]);
  });

  it("are refused where the plants cannot be: more seed parents than shed pollen, more pulled than stood", async () => {
    const db = await emptyRegistry();
    const base = twoYears();
    const [first, second] = base.growOuts;
    if (!first || !second) throw new Error("no grow-outs");
    const growOuts = [
      { ...first, plantsStanding: told(10), seedParents: told(12) },
      {
        ...second,
        plantsStanding: told(5),
        seedParents: null,
        roguedBeforePollen: told(4),
        roguedAfterPollen: told(2),
      },
    ];
    const outcome = await bookNotebookLines(db, owner, twoYears({ growOuts }));
    expect(codes(outcome)).toEqual(["more-seed-than-pollen-parents", "more-rogued-than-stood"]);
    expect(paths(outcome)).toEqual(["growOuts.0.seedParents", "growOuts.1.plantsStanding"]);
  });

  it("are refused where a lot would be its own ancestor, where shares are not 1, and where a date is none", async () => {
    const db = await emptyRegistry();
    const base = twoYears();
    const [first, second] = base.growOuts;
    if (!first || !second) throw new Error("no grow-outs");
    const ring = await bookNotebookLines(
      db,
      owner,
      twoYears({ growOuts: [{ ...first, parents: [{ lot: "1996", share: null }] }, second] }),
    );
    expect(codes(ring)).toEqual(["own-ancestor", "own-ancestor"]);
    const parents = [
      { lot: "jar", share: 0.5 },
      { lot: "1994", share: 0.4 },
    ];
    const shares = await bookNotebookLines(db, owner, twoYears({ growOuts: [first, { ...second, parents }] }));
    expect([codes(shares), paths(shares)]).toEqual([["shares-not-one"], ["growOuts.1.parents"]]);
    const twice = [
      { lot: "jar", share: null },
      { lot: "jar", share: null },
    ];
    const both = await bookNotebookLines(db, owner, twoYears({ growOuts: [first, { ...second, parents: twice }] }));
    expect([codes(both), paths(both)]).toEqual([["parent-twice"], ["growOuts.1.parents.1"]]);
    const date = await bookNotebookLines(db, owner, twoYears({ growOuts: [{ ...first, year: "May-96" }, second] }));
    expect(paths(date)).toEqual(["growOuts.0.year"]);
    expect(await db.read.variety.count()).toBe(0);
  });

  it("are refused for a lot of another crop and for a test with more up than sown", async () => {
    const db = await emptyRegistry();
    granted(await bookNotebookLines(db, owner, twoYears()));
    const pea = standingLotRef((await lotOf(db, "Hollow 3")).id);
    const outcome = await bookNotebookLines(
      db,
      owner,
      booking({
        variety: { name: "Mere Oat", crop: "oat", ownCrop: false },
        tests: [{ line: 0, lot: pea, on: "1999", up: told(21), of: told(20), days: null, words: "21 of 20" }],
      }),
    );
    expect(codes(outcome)).toEqual(["lot-of-another-crop", "more-up-than-sown"]);
  });

  it("are refused to somebody who may only read", async () => {
    const db = await emptyRegistry();
    expect(codes(await bookNotebookLines(db, { ...owner, role: "reader" }, twoYears()))).toEqual(["not-allowed"]);
  });
});

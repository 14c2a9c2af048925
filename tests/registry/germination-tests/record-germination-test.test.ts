import { describe, expect, it } from "vitest";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { recordGerminationTest } from "@/lib/registry/germination-tests/record-germination-test";
import { TestEntrySchema } from "@/lib/schemas/germination-test/test-entry";
import { parsed } from "@/lib/schemas/parsed";
import type { Outcome } from "@/lib/science/outcome";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { entryFor, owner, withLot } from "./with-lot";

const codes = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.refusals.map((each) => each.code));
const paths = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.refusals.map((each) => each.path.join(".")));
const sentences = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.refusals.map((each) => each.sentence));

describe("a germination test written down", () => {
  it("stands with its replicates and counts, and is one change set that one undo takes back", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const done = granted(await recordGerminationTest(db, owner, entryFor(lotId)));
    const test = await db.read.germinationTest.findUniqueOrThrow({
      where: { id: done.value.testId },
      include: { replicates: { include: { counts: true } } },
    });
    expect(test.onFirst).toBe("1999-03-01");
    expect(test.replicates.map((replicate) => replicate.sown)).toEqual([25, 25, 25, 25]);
    const normal = test.replicates.flatMap((replicate) => replicate.counts).reduce((sum, each) => sum + each.normal, 0);
    // 20+3 + 18+4 + 22+2 + 19+4, by hand
    expect(normal).toBe(92);
    granted(await undoChangeSet(db, owner, done.changeSetId as string));
    expect(await db.read.germinationTest.count()).toBe(0);
    expect(await db.read.testCount.count()).toBe(0);
  });

  it("is named after its lot where no name is written, the next number each time", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const first = granted(await recordGerminationTest(db, owner, entryFor(lotId)));
    const second = granted(await recordGerminationTest(db, owner, entryFor(lotId)));
    expect([first.value.name, second.value.name]).toEqual(["Quern 1 test 1", "Quern 1 test 2"]);
  });

  it("may be set up without a count, to be counted later", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const entry = entryFor(lotId, { replicates: [{ name: "1", sown: 20 }] });
    granted(await recordGerminationTest(db, owner, entry));
    expect(await db.read.testCount.count()).toBe(0);
  });

  it("keeps a kind that was not told apart as not looked, not as none", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const replicates = [{ name: "1", sown: 20, counts: [{ day: 7, normal: 18, dead: 0 }] }];
    granted(await recordGerminationTest(db, owner, entryFor(lotId, { replicates })));
    const count = await db.read.testCount.findFirstOrThrow();
    expect([count.dead, count.hard]).toEqual([0, null]);
  });

  it("is refused at the count that passes what was sown", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const counts = [
      { day: 5, normal: 20 },
      { day: 10, normal: 4, dead: 2 },
    ];
    const entry = entryFor(lotId, { replicates: [{ name: "1", sown: 25, counts }] });
    const outcome = await recordGerminationTest(db, owner, entry);
    expect(paths(outcome)).toEqual(["replicates.0.counts.1"]);
    expect(sentences(outcome)).toEqual([
      "6 passes what was left in replicate 1; of 25 sown only 5 were left to count on day 10; count only what is new that day",
    ]);
    expect(await db.read.germinationTest.count()).toBe(0);
  });

  it("is refused with every fault at its field: the date, a replicate's name twice, a day twice", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const counts = [
      { day: 5, normal: 2 },
      { day: 5, normal: 3 },
    ];
    const replicates = [
      { name: "A", sown: 25, counts },
      { name: "a", sown: 25 },
    ];
    const outcome = await recordGerminationTest(db, owner, entryFor(lotId, { on: "last spring", replicates }));
    expect(paths(outcome)).toEqual(["on", "replicates.0.counts.1.day", "replicates.1.name"]);
  });

  it("is refused for a lot that is not there and for a name that is taken", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    expect(codes(await recordGerminationTest(db, owner, entryFor("none")))).toEqual(["unknown-lot"]);
    granted(await recordGerminationTest(db, owner, entryFor(lotId, { name: "Kitchen 4" })));
    const outcome = await recordGerminationTest(db, owner, entryFor(lotId, { name: "kitchen 4 " }));
    expect(sentences(outcome)).toEqual([
      '"kitchen 4" is the test of lot Quern 1 already; give this one another name, or leave the name empty',
    ]);
  });

  it("is refused to somebody who may only read", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    expect(codes(await recordGerminationTest(db, { ...owner, role: "reader" }, entryFor(lotId)))).toEqual([
      "not-allowed",
    ]);
  });

  it("is refused in its shape before it reaches the registry, each fault at its field", () => {
    const given = {
      lotId: "x",
      on: "",
      basis: "roots",
      replicates: [{ name: "1", sown: 0, counts: [{ day: 5, normal: 1.5 }] }],
    };
    const outcome = parsed(TestEntrySchema, given);
    expect(paths(outcome)).toEqual(["on", "basis", "replicates.0.sown", "replicates.0.counts.0.normal"]);
    expect(sentences(outcome)[2]).toBe("0 is too few; a replicate has at least one seed");
  });
});

describe("what looks odd about a test", () => {
  it("is stored and said: before the harvest, still to come, another basis, treated seed", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const before = granted(await recordGerminationTest(db, owner, entryFor(lotId, { on: "1997-03" }), "1999-05-01"));
    expect(before.value.warnings.map((warning) => warning.code)).toEqual(["before-harvest"]);
    const entry = entryFor(lotId, { on: "1999-06-01", basis: "sprouted" });
    const after = granted(await recordGerminationTest(db, owner, entry, "1999-05-01"));
    expect(after.value.warnings.map((warning) => warning.code)).toEqual(["after-today", "other-basis"]);
    await db.write.lot.update({
      where: { id: lotId },
      data: { treatment: "chemical", treatmentSubstance: "a dressing" },
    });
    const treated = granted(await recordGerminationTest(db, owner, entryFor(lotId), "1999-05-01"));
    expect(treated.value.warnings.at(-1)?.text).toContain("your local rules");
  });
});

describe("seeds used in a test", () => {
  it("leave the jar by the lot's thousand-seed weight: 100 seeds of 200 g a thousand are 20 g", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    granted(await recordGerminationTest(db, owner, entryFor(lotId, { seedsUsed: { book: "by-seed-weight" } })));
    const line = await db.read.ledgerEntry.findFirstOrThrow({ where: { kind: "tested" } });
    expect([line.amount, line.unit, line.onFirst, line.other]).toEqual([20, "g", "1999-03-01", "Quern 1 test 1"]);
  });

  it("leave the jar as they were weighed, or not at all where nobody asks", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    granted(await recordGerminationTest(db, owner, entryFor(lotId)));
    expect(await db.read.ledgerEntry.count({ where: { kind: "tested" } })).toBe(0);
    granted(await recordGerminationTest(db, owner, entryFor(lotId, { seedsUsed: { book: "weighed", grams: 19.6 } })));
    expect((await db.read.ledgerEntry.findFirstOrThrow({ where: { kind: "tested" } })).amount).toBe(19.6);
  });

  it("are refused where the lot has no thousand-seed weight, no quantity, or too little", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const booked = { seedsUsed: { book: "by-seed-weight" } };
    await db.write.lot.update({ where: { id: lotId }, data: { thousandSeedGrams: null } });
    expect(codes(await recordGerminationTest(db, owner, entryFor(lotId, booked)))).toEqual(["no-seed-weight"]);
    const bare = await withLot(db, { number: "Quern 2", grams: null });
    expect(codes(await recordGerminationTest(db, owner, entryFor(bare.lotId, booked)))).toEqual(["quantity-unknown"]);
    const small = await withLot(db, { number: "Quern 3", grams: 12 });
    const outcome = await recordGerminationTest(db, owner, entryFor(small.lotId, booked));
    // 12 g in the jar; 100 seeds of 200 g a thousand are 20 g
    expect(paths(outcome)).toEqual(["seedsUsed"]);
    expect(sentences(outcome)[0]).toContain("write at most 12 g");
    expect(await db.read.germinationTest.count()).toBe(0);
  });
});

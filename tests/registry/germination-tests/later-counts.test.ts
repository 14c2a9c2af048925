import { describe, expect, it } from "vitest";
import type { Database } from "@/lib/db";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { correctCount } from "@/lib/registry/germination-tests/correct-count";
import { readGerminationTest } from "@/lib/registry/germination-tests/read-germination-test";
import { recordCounts } from "@/lib/registry/germination-tests/record-counts";
import { recordGerminationTest } from "@/lib/registry/germination-tests/record-germination-test";
import { countsTakenBack, standingCounts } from "@/lib/registry/germination-tests/standing-counts";
import { recordHistory } from "@/lib/registry/history/record-history";
import { idsOfLot } from "@/lib/registry/lots/lot-history";
import { CorrectedCountSchema } from "@/lib/schemas/germination-test/corrected-count";
import { LaterCountsSchema } from "@/lib/schemas/germination-test/later-counts";
import { parsed } from "@/lib/schemas/parsed";
import type { Outcome } from "@/lib/science/outcome";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { entryFor, owner, withLot } from "./with-lot";

const codes = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.refusals.map((each) => each.code));
const paths = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.refusals.map((each) => each.path.join(".")));

/** A running test of two replicates of 25, counted on day 5: 15 and 17. */
async function running(db: Database) {
  const { lotId } = await withLot(db);
  const replicates = [15, 17].map((normal, index) => ({
    name: String(index + 1),
    sown: 25,
    counts: [{ day: 5, normal }],
  }));
  const { value } = granted(await recordGerminationTest(db, owner, entryFor(lotId, { replicates })));
  const stored = await db.read.testReplicate.findMany({ where: { testId: value.testId }, orderBy: { name: "asc" } });
  const [first = "", second = ""] = stored.map((replicate) => replicate.id);
  return { testId: value.testId, first, second };
}

const later = (given: unknown) => granted(parsed(LaterCountsSchema, given));
const correction = (given: unknown) => granted(parsed(CorrectedCountSchema, given));
const countsOf = (db: Database, replicateId: string) =>
  db.read.testCount.findMany({ where: { replicateId }, orderBy: { id: "asc" } });

describe("a later day's counts", () => {
  it("stand beside the earlier ones", async () => {
    const db = await emptyRegistry();
    const { testId, first, second } = await running(db);
    const counts = [
      { replicateId: first, day: 10, normal: 8, dead: 2 },
      { replicateId: second, day: 10, normal: 6 },
    ];
    const done = granted(await recordCounts(db, owner, later({ testId, counts })));
    expect(done.value.counted).toBe(2);
    expect(standingCounts(await countsOf(db, first)).map((count) => [count.day, count.normal])).toEqual([
      [5, 15],
      [10, 8],
    ]);
  });

  it("are refused past what is left, on a day that is counted already, and for a replicate of another test", async () => {
    const db = await emptyRegistry();
    const { testId, first, second } = await running(db);
    const counts = [
      { replicateId: first, day: 10, normal: 11 },
      { replicateId: second, day: 5, normal: 1 },
      { replicateId: "other", day: 10, normal: 1 },
    ];
    const outcome = await recordCounts(db, owner, later({ testId, counts }));
    expect(codes(outcome)).toEqual(["past-sown", "day-twice", "unknown-replicate"]);
    expect(paths(outcome)).toEqual(["counts.0", "counts.1.day", "counts.2.replicateId"]);
    expect(await db.read.testCount.count()).toBe(2);
  });

  it("are refused at the new count where an earlier day that was forgotten makes the later one pass", async () => {
    const db = await emptyRegistry();
    const { testId, first } = await running(db);
    const outcome = await recordCounts(
      db,
      owner,
      later({ testId, counts: [{ replicateId: first, day: 3, normal: 11 }] }),
    );
    expect(paths(outcome)).toEqual(["counts.0"]);
  });

  it("are refused for a test that is not there", async () => {
    const db = await emptyRegistry();
    const outcome = await recordCounts(
      db,
      owner,
      later({ testId: "no", counts: [{ replicateId: "x", day: 1, normal: 1 }] }),
    );
    expect(codes(outcome)).toEqual(["unknown-test"]);
  });
});

describe("a corrected count", () => {
  it("is a new count that names the old one, which stays", async () => {
    const sent: string[] = [];
    const db = await emptyRegistry({ onStatement: (sql) => sent.push(sql) });
    const { testId, first } = await running(db);
    const [old] = await countsOf(db, first);
    const given = { countId: old?.id, instead: { day: 5, normal: 13 }, reason: "read the wrong tray" };
    const done = granted(await correctCount(db, owner, correction(given)));
    const counts = await countsOf(db, first);
    expect(counts).toHaveLength(2);
    const [standing] = standingCounts(counts);
    expect([standing?.normal, standing?.before.map((count) => count.normal)]).toEqual([13, [15]]);
    // the correction stands in the history of the test, and in that of its lot
    const { lotId } = await db.read.germinationTest.findUniqueOrThrow({ where: { id: testId } });
    sent.length = 0;
    const ofTest = (await readGerminationTest(db, testId, 0.7))?.ids ?? [];
    await recordHistory(db, ofTest);
    // its page sends two more (settings, pictures), and is to stay within a dozen
    expect(sent.length).toBeLessThanOrEqual(10);
    for (const ids of [ofTest, await idsOfLot(db.read, lotId)]) {
      const reasons = (await recordHistory(db, ids)).entries.map(({ reason }) => reason);
      expect(reasons.slice(0, 2)).toEqual(["read the wrong tray", null]);
    }
    granted(await undoChangeSet(db, owner, done.changeSetId as string));
    expect(standingCounts(await countsOf(db, first)).map((count) => count.normal)).toEqual([15]);
  });

  it("may be taken back altogether: then nothing stands, and both lines stay", async () => {
    const db = await emptyRegistry();
    const { first } = await running(db);
    const [old] = await countsOf(db, first);
    granted(await correctCount(db, owner, correction({ countId: old?.id, instead: null })));
    const counts = await countsOf(db, first);
    expect(counts).toHaveLength(2);
    expect(standingCounts(counts)).toEqual([]);
    expect(countsTakenBack(counts).map((count) => count.id)).toEqual([old?.id]);
  });

  it("is refused past what was sown, and for a count that was corrected before", async () => {
    const db = await emptyRegistry();
    const { first } = await running(db);
    const [old] = await countsOf(db, first);
    const tooMany = await correctCount(db, owner, correction({ countId: old?.id, instead: { day: 5, normal: 26 } }));
    expect([codes(tooMany), paths(tooMany)]).toEqual([["past-sown"], ["instead"]]);
    granted(await correctCount(db, owner, correction({ countId: old?.id, instead: { day: 5, normal: 14 } })));
    const again = await correctCount(db, owner, correction({ countId: old?.id, instead: null }));
    expect(codes(again)).toEqual(["corrected-before"]);
    expect(codes(await correctCount(db, owner, correction({ countId: "no", instead: null })))).toEqual([
      "unknown-count",
    ]);
  });
});

import { describe, expect, it } from "vitest";
import { listGerminationTests } from "@/lib/registry/germination-tests/list-germination-tests";
import { readGerminationTest } from "@/lib/registry/germination-tests/read-germination-test";
import { recordCounts } from "@/lib/registry/germination-tests/record-counts";
import { recordGerminationTest } from "@/lib/registry/germination-tests/record-germination-test";
import { readTestListQuery } from "@/lib/schemas/germination-test/list-query";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { entryFor, owner, withLot } from "./with-lot";

/** One replicate with its count on day 10. */
const single = (sown: number, normal: number, more: object = {}) => [
  { name: "1", sown, counts: [{ day: 10, normal, ...more }] },
];

describe("a germination test that is read", () => {
  it("gives 18 of 20 as between 68 and 99 in a hundred, exact", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const { value } = granted(await recordGerminationTest(db, owner, entryFor(lotId, { replicates: single(20, 18) })));
    const read = await readGerminationTest(db, value.testId, 0.7);
    // Clopper-Pearson of 18/20: 68.3 to 98.8, the table of small_test_intervals.csv
    expect(read?.result?.exact.low).toBeCloseTo(0.683, 3);
    expect(read?.result?.exact.high).toBeCloseTo(0.988, 3);
    expect(read?.compared.how).toBe("first");
    expect(read?.totals.stage).toBe("final");
  });

  it("is compared with the lot's last finished test on the same basis: 47, then 40 of 50 is no change that can be told", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const record = async (told: object) =>
      granted(await recordGerminationTest(db, owner, entryFor(lotId, told))).value.testId;
    await record({ on: "1999-03-01", replicates: single(50, 47) });
    await record({ on: "2000-03-01", basis: "sprouted", replicates: single(50, 50) });
    const third = await record({ on: "2001-03-01", replicates: single(50, 40) });
    const read = await readGerminationTest(db, third, 0.7);
    expect(read?.testsOfLot.map((test) => test.on)).toEqual(["1999-03-01", "2000-03-01", "2001-03-01"]);
    if (read?.compared.how !== "compared") throw new Error("not compared");
    // Fisher's exact test of 47/50 against 40/50: p = 0.071 (two-sided), checked by an independent program
    expect(read.compared.earlier.on).toBe("1999-03-01");
    expect(read.compared.comparison.fisherP).toBeCloseTo(0.071, 3);
    expect(read.compared.comparison.changed).toBe(false);
  });

  it("is not compared with a test that counted something else", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    granted(await recordGerminationTest(db, owner, entryFor(lotId, { basis: "sprouted", replicates: single(50, 50) })));
    const entry = entryFor(lotId, { on: "2000-03-01", replicates: single(50, 40) });
    const { value } = granted(await recordGerminationTest(db, owner, entry));
    expect((await readGerminationTest(db, value.testId, 0.7))?.compared.how).toBe("other-basis");
  });

  it("runs until its last day was counted, and is not compared before", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const replicates = [{ name: "1", sown: 20, counts: [{ day: 5, normal: 12 }] }];
    const { value } = granted(await recordGerminationTest(db, owner, entryFor(lotId, { replicates })));
    const early = await readGerminationTest(db, value.testId, 0.7);
    expect([early?.totals.stage, early?.totals.left, early?.compared.how]).toEqual(["running", 8, "not-done"]);
    const [waiting] = (await listGerminationTests(db, readTestListQuery({}), "1999-03-11")).running;
    expect([waiting?.due?.first, waiting?.isDue]).toEqual(["1999-03-11", true]);
    const counts = [
      {
        replicateId: early?.replicates[0]?.id ?? "",
        day: 10,
        normal: 6,
        abnormal: null,
        hard: null,
        fresh: null,
        dead: 2,
      },
    ];
    granted(await recordCounts(db, owner, { testId: value.testId, counts }));
    const done = await readGerminationTest(db, value.testId, 0.7);
    expect([done?.totals.stage, done?.totals.sums.normal, done?.totals.sums.hard]).toEqual(["final", 18, null]);
    expect((await listGerminationTests(db, readTestListQuery({}), "1999-03-11")).running).toEqual([]);
  });

  it("says nothing of a germination where nothing was counted: set up is not none came up", async () => {
    const db = await emptyRegistry();
    const { lotId } = await withLot(db);
    const entry = entryFor(lotId, { replicates: [{ name: "1", sown: 20 }] });
    const { value } = granted(await recordGerminationTest(db, owner, entry));
    const read = await readGerminationTest(db, value.testId, 0.7);
    expect([read?.result, read?.totals.stage, read?.testsOfLot[0]?.germination]).toEqual([null, "set up", null]);
  });

  it("is nothing where there is no such test", async () => {
    expect(await readGerminationTest(await emptyRegistry(), "no", 0.7)).toBeNull();
  });
});

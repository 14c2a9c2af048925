import type { Database } from "@/lib/db";
import { addDays, type CivilDay, compareDays } from "@/lib/science/dates/civil-day";
import { type TestTotals, testTotals } from "./test-totals";

/** A test that waits for its last count. */
export interface RunningTest {
  readonly id: string;
  readonly name: string;
  readonly on: string;
  readonly lot: { readonly id: string; readonly number: string };
  readonly variety: { readonly id: string; readonly name: string; readonly seedCoat: string | null };
  readonly totals: TestTotals;
  /** first and last day on which the last count can fall; null where the test has no last day written down */
  readonly due: { readonly first: CivilDay; readonly last: CivilDay } | null;
  readonly isDue: boolean;
}

/** A test that nobody came back to for this long has been left. */
const leftAfterDays = 120;

/** Tests set up lately whose last count is still to be written down, the one longest due first. */
export async function runningTests(db: Database, today: CivilDay): Promise<RunningTest[]> {
  const since = addDays(today, -leftAfterDays);
  const tests = await db.read.germinationTest.findMany({
    where: { onLast: { gte: since }, onFirst: { lte: today } },
    include: {
      lot: { select: { id: true, number: true, variety: { select: { id: true, name: true, seedCoat: true } } } },
      replicates: { include: { counts: true } },
    },
  });
  const running = tests.flatMap((test): RunningTest[] => {
    const totals = testTotals(test);
    if (totals.stage === "final") return [];
    const { id, name, on, onFirst, onLast, finalCountDay } = test;
    const { variety, ...lot } = test.lot;
    const due =
      finalCountDay === null ? null : { first: addDays(onFirst, finalCountDay), last: addDays(onLast, finalCountDay) };
    return [{ id, name, on, lot, variety, totals, due, isDue: due !== null && compareDays(due.first, today) <= 0 }];
  });
  return running.sort(
    (a, b) => (a.due?.first ?? "9999").localeCompare(b.due?.first ?? "9999") || (a.id < b.id ? -1 : 1),
  );
}

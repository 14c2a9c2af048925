import type { Client } from "@/lib/db";
import { addDays, type CivilDay, compareDays } from "@/lib/science/dates/civil-day";
import type { ListedTest } from "./listed-tests";

/** A test that waits for its last count. */
export interface RunningTest extends ListedTest {
  /** first and last day on which the last count can fall; null where the test has no last day written down */
  readonly due: { readonly first: CivilDay; readonly last: CivilDay } | null;
  readonly isDue: boolean;
}

/** A test that nobody came back to for this long has been left. */
const leftAfterDays = 120;

/** Ids of the tests set up lately, counted or not. */
export async function setUpLately(db: Client, today: CivilDay): Promise<string[]> {
  const since = addDays(today, -leftAfterDays);
  const rows = await db.germinationTest.findMany({
    where: { onLast: { gte: since }, onFirst: { lte: today } },
    select: { id: true },
  });
  return rows.map((row) => row.id);
}

/** Of these tests those whose last count is still to be written down, the one longest due first. */
export function asRunning(tests: readonly ListedTest[], today: CivilDay): RunningTest[] {
  const running = tests.flatMap((test): RunningTest[] => {
    if (test.totals.stage === "final") return [];
    const { onFirst, onLast, finalCountDay } = test;
    const due =
      finalCountDay === null ? null : { first: addDays(onFirst, finalCountDay), last: addDays(onLast, finalCountDay) };
    return [{ ...test, due, isDue: due !== null && compareDays(due.first, today) <= 0 }];
  });
  return running.sort(
    (a, b) => compareDays(a.due?.first ?? "9999-12-31", b.due?.first ?? "9999-12-31") || (a.id < b.id ? -1 : 1),
  );
}

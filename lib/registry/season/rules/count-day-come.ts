import { addDays, type CivilDay, daysBetween } from "@/lib/science/dates/civil-day";
import type { OpenTest, SeasonRecords, WaitingItem } from "../records";

export interface CountDay {
  readonly test: OpenTest;
  /** the day on which to count, and whether it is the last count */
  readonly due: CivilDay;
  readonly last: boolean;
  readonly daysLate: number;
}

/** Where nobody wrote a day for the last count, the first look is after a week. Source: home practice, 7 and 14 days. */
export const firstLookDays = 7;

/** A test that nobody came back to for this long has been left; it waits no more. */
export const leftAfterDays = 120;

/** The day on which a running test is to be counted next; null where its last count stands. */
export function countDue(test: OpenTest): { due: CivilDay; last: boolean } | null {
  const final = test.finalCountDay;
  if (final === null) {
    return test.counts > 0 ? null : { due: addDays(test.onLast, firstLookDays), last: false };
  }
  // Counts that name no day were made of a test that is over.
  if (test.counts > 0 && (test.lastCountDay === null || test.lastCountDay >= final)) return null;
  const first = test.counts === 0 && firstLookDays < final;
  return first
    ? { due: addDays(test.onLast, firstLookDays), last: false }
    : { due: addDays(test.onLast, Math.ceil(final)), last: true };
}

/** Running tests whose count day has come: it is today, or was before and not so long ago that the test has been left. */
export function countDayCome({ tests, lots, today }: SeasonRecords): WaitingItem<"count-day-come", CountDay>[] {
  const varietyOfLot = new Map(lots.map((lot) => [lot.id, lot.varietyId]));
  return tests.flatMap((test) => {
    const next = countDue(test);
    if (next === null || next.due > today) return [];
    const daysLate = daysBetween(next.due, today);
    if (daysLate > leftAfterDays) return [];
    const facts = { test, ...next, daysLate };
    const varietyId = varietyOfLot.get(test.lotId) ?? null;
    return [{ rule: "count-day-come", place: "shed", urgency: 0, varietyId, lotId: test.lotId, facts }];
  });
}

import { daysBetween } from "@/lib/science/dates/civil-day";
import { lastDayOf } from "../../transfers/due-day";
import type { SeasonRecords, StoredPromise, WaitingItem } from "../records";

export interface PromiseOverdue {
  readonly promise: StoredPromise;
  /** who promised; null: nobody on record, or a name that was erased */
  readonly name: string | null;
  readonly daysLate: number;
}

/** A promise that was not kept by the last possible day of its date. One without a date is never late. */
export function promiseOverdue({
  promises,
  names,
  today,
}: SeasonRecords): WaitingItem<"promise-overdue", PromiseOverdue>[] {
  return promises.flatMap((promise) => {
    const due = promise.due === null ? null : lastDayOf(promise.due);
    if (promise.keptOn !== null || due === null || due >= today) return [];
    const facts = { promise, name: names.get(promise.stewardId ?? "") ?? null, daysLate: daysBetween(due, today) };
    const { varietyId, lotId } = promise;
    return [{ rule: "promise-overdue" as const, place: "desk" as const, urgency: 1 as const, varietyId, lotId, facts }];
  });
}

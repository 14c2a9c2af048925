import { daysBetween } from "@/lib/science/dates/civil-day";
import { lastDayOf } from "../../transfers/due-day";
import { returnsOfLoans } from "../../transfers/loans";
import type { SeasonRecords, StoredTransfer, WaitingItem } from "../records";

export interface ReplyDue {
  readonly transfer: StoredTransfer;
  /** who got the seed: a name, the words it was told in, or null */
  readonly name: string | null;
  readonly daysLate: number;
}

/**
 * Seed that was handed over and whose answer is late: its day is past, and since then neither a word of the steward who got it nor seed came
 * back. Where a promise with a day was given with it, that is waited for instead.
 */
export function replyDue(records: SeasonRecords): WaitingItem<"reply-due", ReplyDue>[] {
  const { transfers, promises, words, names, today } = records;
  const back = returnsOfLoans(transfers);
  const promised = new Set(promises.flatMap((each) => (each.due !== null && each.transferId ? [each.transferId] : [])));
  return transfers.flatMap((transfer) => {
    const due = transfer.replyDue === null ? null : lastDayOf(transfer.replyDue);
    if (due === null || due >= today || promised.has(transfer.id) || back.has(transfer.id)) return [];
    const heard = words.some(
      (word) =>
        word.stewardId === transfer.toStewardId &&
        word.varietyId === transfer.varietyId &&
        word.onFirst > transfer.onLast,
    );
    if (heard) return [];
    const name = names.get(transfer.toStewardId ?? "") ?? transfer.toWords;
    const facts = { transfer, name, daysLate: daysBetween(due, today) };
    const { varietyId, lotId } = transfer;
    return [{ rule: "reply-due" as const, place: "desk" as const, urgency: 2 as const, varietyId, lotId, facts }];
  });
}

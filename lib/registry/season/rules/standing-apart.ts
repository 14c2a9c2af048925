import type { SeasonRecords, WaitingItem } from "../records";
import { arrivals, isLong } from "./quarantine-long";

export interface StandingApart {
  readonly status: "quarantine" | "hold";
  readonly reason: string | null;
}

/** Lots in quarantine or on hold: each waits for somebody to let it go or to discard it. One that waits for too long is another rule's matter. */
export function standingApart({
  lots,
  transfers,
  today,
}: SeasonRecords): WaitingItem<"standing-apart", StandingApart>[] {
  const came = arrivals(transfers);
  return lots.flatMap((lot) => {
    if (lot.status !== "quarantine" && lot.status !== "hold") return [];
    const since = came.get(lot.id);
    if (lot.status === "quarantine" && since !== undefined && isLong(since, today)) return [];
    const facts = { status: lot.status, reason: lot.statusReason } as const;
    return [{ rule: "standing-apart", place: "shed", urgency: 1, varietyId: lot.varietyId, lotId: lot.id, facts }];
  });
}

import type { SeasonRecords, WaitingItem } from "../records";

export interface StandingApart {
  readonly status: "quarantine" | "hold";
  readonly reason: string | null;
}

/** Lots in quarantine or on hold: each waits for somebody to let it go or to discard it. */
export function standingApart({ lots }: SeasonRecords): WaitingItem<"standing-apart", StandingApart>[] {
  return lots.flatMap((lot) => {
    if (lot.status !== "quarantine" && lot.status !== "hold") return [];
    const facts = { status: lot.status, reason: lot.statusReason } as const;
    return [{ rule: "standing-apart", place: "shed", urgency: 1, varietyId: lot.varietyId, lotId: lot.id, facts }];
  });
}

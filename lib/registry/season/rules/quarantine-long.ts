import { addYears, type CivilDay } from "@/lib/science/dates/civil-day";
import type { SeasonRecords, StoredTransfer, WaitingItem } from "../records";

export interface QuarantineLong {
  /** the last possible day on which it came in */
  readonly since: CivilDay;
  readonly reason: string | null;
}

/** How long growing apart and comparing takes. Source: trade.md 3.10, one or two seasons. */
export const quarantineYears = 2;

/** When each lot came in, by the last possible day of its transfer, by lot. */
export function arrivals(transfers: readonly StoredTransfer[]): ReadonlyMap<string, CivilDay> {
  const came = new Map<string, CivilDay>();
  for (const { newLotId, onLast } of transfers) if (newLotId !== null) came.set(newLotId, onLast);
  return came;
}

/** Lots that surely stand in quarantine for longer than two seasons: decide about them. Where no transfer says when one came in, none waits here. */
export function quarantineLong({
  lots,
  transfers,
  today,
}: SeasonRecords): WaitingItem<"quarantine-long", QuarantineLong>[] {
  const came = arrivals(transfers);
  return lots.flatMap((lot) => {
    const since = came.get(lot.id);
    if (lot.status !== "quarantine" || since === undefined || !isLong(since, today)) return [];
    const facts = { since, reason: lot.statusReason };
    const { varietyId, id: lotId } = lot;
    return [{ rule: "quarantine-long" as const, place: "shed" as const, urgency: 1 as const, varietyId, lotId, facts }];
  });
}

/** Whether two seasons are past since a day. */
export function isLong(since: CivilDay, today: CivilDay): boolean {
  return addYears(since, quarantineYears) < today;
}

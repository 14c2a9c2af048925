import { grouped } from "../../change-set/grouped";
import type { SeasonGrowOut, SeasonRecords, WaitingItem } from "../records";

export interface FailedGrowOut {
  readonly growOut: SeasonGrowOut;
  readonly outcome: string;
}

/**
 * The last grow-out of a variety gave no seed, and somebody wrote why: it goes to the top of the next plan. One that was never sown, and a
 * later plan that is not sown yet, answer it. "Last" is by the last possible day of sowing. Source: trade.md 3.8, trade practice.
 */
export function failedGrowOut({ growOuts, lots }: SeasonRecords): WaitingItem<"failed-grow-out", FailedGrowOut>[] {
  const gave = new Set(lots.flatMap((lot) => lot.growOutId ?? []));
  return [...grouped(growOuts, (growOut) => growOut.varietyId)].flatMap(([varietyId, own]) => {
    const planned = own.some(
      (each) => each.sownLast === null && each.outcome === null && each.plantsStanding === null && !gave.has(each.id),
    );
    const sown = own.filter((each) => each.sownLast !== null);
    const last = sown.reduce<SeasonGrowOut | null>(
      (newest, each) => (newest === null || (each.sownLast ?? "") >= (newest.sownLast ?? "") ? each : newest),
      null,
    );
    if (planned || last === null || last.outcome === null || gave.has(last.id)) return [];
    const facts = { growOut: last, outcome: last.outcome };
    return [{ rule: "failed-grow-out", place: "desk", urgency: 0, varietyId, lotId: null, facts }];
  });
}

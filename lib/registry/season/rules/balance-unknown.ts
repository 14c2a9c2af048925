import { mayHoldSeed } from "../../varieties/holders";
import type { SeasonRecords, WaitingItem } from "../records";

export interface BalanceUnknown {
  /** the year of its harvest as written */
  readonly year: string | null;
}

/**
 * A lot that is not finished and of which nothing was ever entered: no receipt, no harvest, no weighing. Unknown is not none: somebody has to
 * look into the jar. A lot with entries in ears or packets is known in those.
 */
export function balanceUnknown({ lots }: SeasonRecords): WaitingItem<"balance-unknown", BalanceUnknown>[] {
  return lots
    .filter((lot) => mayHoldSeed(lot) && lot.gramsOnHand === null && lot.entries === 0)
    .map((lot) => ({
      rule: "balance-unknown",
      place: "shed",
      urgency: 2,
      varietyId: lot.varietyId,
      lotId: lot.id,
      facts: { year: lot.year },
    }));
}

import type { Holder } from "../../varieties/holders";
import type { SeasonRecords, WaitingItem } from "../records";

export interface NotConfirmed {
  readonly holder: Holder;
  /** null: a steward whose name was erased */
  readonly name: string | null;
}

/**
 * A steward who has seed by the records, of whom nothing was heard, and whose seed nobody had in hand, within the years that a word counts
 * (settings). A clear no is an answer and does not wait; seed past its usual life is another rule's matter.
 */
export function holderNotConfirmed({
  varieties,
  holders,
  names,
}: SeasonRecords): WaitingItem<"holder-not-confirmed", NotConfirmed>[] {
  return [...varieties.values()].flatMap((variety) =>
    (holders.get(variety.id) ?? []).flatMap((holder) => {
      const silent =
        holder.why === "nothing heard" || holder.why === "heard too long ago" || holder.why === "does not know";
      if (holder.stewardId === null || !silent) return [];
      const facts = { holder, name: names.get(holder.stewardId) ?? null };
      return [
        {
          rule: "holder-not-confirmed" as const,
          place: "desk" as const,
          urgency: 2 as const,
          varietyId: variety.id,
          lotId: null,
          facts,
        },
      ];
    }),
  );
}

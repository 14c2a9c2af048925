import type { SeasonRecords, WaitingItem } from "../records";

export interface OnePlace {
  /** places of confirmed holders: 0 or 1 */
  readonly places: number;
  /** holders that do not count as confirmed; one who said that it is gone is none */
  readonly notConfirmed: number;
}

/**
 * A variety with seed somewhere, but in one place only, or in none that is confirmed. Places in one building count as one.
 * Source: at least three people in three places is the aim (trade practice, not verified); a lone place is the alarm.
 */
export function onePlaceOnly({ varieties, holders }: SeasonRecords): WaitingItem<"one-place-only", OnePlace>[] {
  return [...varieties.values()].flatMap((variety) => {
    const all = holders.get(variety.id) ?? [];
    const confirmed = all.filter((holder) => holder.confirmed);
    const places = confirmed.reduce((sum, holder) => sum + holder.places, 0);
    if (all.length === 0 || places > 1) return [];
    const facts = {
      places,
      notConfirmed: all.filter((holder) => !holder.confirmed && holder.why !== "said no").length,
    };
    const urgency = places === 0 ? 0 : 1;
    return [{ rule: "one-place-only", place: "desk", urgency, varietyId: variety.id, lotId: null, facts }];
  });
}

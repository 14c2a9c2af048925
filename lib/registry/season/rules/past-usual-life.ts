import { mayHoldSeed, surelyYearsOld } from "../../varieties/holders";
import type { SeasonRecords, WaitingItem } from "../records";

export interface PastLife {
  /** years since the last possible day of the harvest */
  readonly years: number;
  readonly usual: { readonly low: number | null; readonly high: number };
}

/**
 * The newest lots of a variety are past the usual life of its crop's seed: surely older than the upper end. A lot is left out where a
 * younger one of the variety still holds seed, for then the variety does not hang on it. Past the line means years > upper end.
 */
export function pastUsualLife({ lots, varieties, today }: SeasonRecords): WaitingItem<"past-usual-life", PastLife>[] {
  const holding = lots.filter(mayHoldSeed);
  const young = new Set<string>();
  const past = holding.flatMap((lot) => {
    const crop = varieties.get(lot.varietyId)?.crop;
    const years = surelyYearsOld(lot, today);
    const high = crop?.seedLifeYearsMax ?? null;
    if (high === null || years === null || years <= high) {
      young.add(lot.varietyId);
      return [];
    }
    return [{ lot, facts: { years, usual: { low: crop?.seedLifeYearsMin ?? null, high } } }];
  });
  return past
    .filter(({ lot }) => !young.has(lot.varietyId))
    .map(({ lot, facts }) => ({
      rule: "past-usual-life",
      place: "field",
      urgency: 1,
      varietyId: lot.varietyId,
      lotId: lot.id,
      facts,
    }));
}

import { grouped } from "../../change-set/grouped";
import { mayHoldSeed, surelyYearsOld } from "../../varieties/holders";
import type { SeasonRecords, WaitingItem } from "../records";

export interface PastLife {
  /** years since the last possible day of the harvest of the newest lot */
  readonly years: number;
  readonly usual: { readonly low: number | null; readonly high: number };
  /** how many older lots of the variety may still hold seed */
  readonly older: number;
}

/**
 * A variety whose newest lot is past the usual life of its crop's seed: surely older than the upper end (years > upper end). While any lot
 * that may hold seed is younger, or of unknown age, the variety does not hang on old seed. One item a variety, naming its newest lot.
 */
export function pastUsualLife({ lots, varieties, today }: SeasonRecords): WaitingItem<"past-usual-life", PastLife>[] {
  return [...grouped(lots.filter(mayHoldSeed), (lot) => lot.varietyId)].flatMap(([varietyId, own]) => {
    const crop = varieties.get(varietyId)?.crop;
    const high = crop?.seedLifeYearsMax ?? null;
    const ages = own.map((lot) => ({ lot, years: surelyYearsOld(lot, today) }));
    const old = ages.flatMap(({ lot, years }) =>
      high !== null && years !== null && years > high ? [{ lot, years }] : [],
    );
    if (high === null || old.length < ages.length) return [];
    const newest = old.reduce((youngest, each) => (each.years < youngest.years ? each : youngest));
    const usual = { low: crop?.seedLifeYearsMin ?? null, high };
    const facts = { years: newest.years, usual, older: old.length - 1 };
    return [{ rule: "past-usual-life", place: "field", urgency: 1, varietyId, lotId: newest.lot.id, facts }];
  });
}

import { yearsFromDayToDay } from "@/lib/science/dates/age-span";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { mayHoldSeed, surelyYearsOld } from "../../varieties/holders";
import type { SeasonCrop, SeasonLot, SeasonRecords, WaitingItem } from "../records";

export interface TestOverdue {
  /** years since the last possible day of the last test; null: never tested */
  readonly yearsSince: number | null;
  /** how many years may lie between two tests of this lot */
  readonly everyYears: number;
  /** whether the lot is past its usual life, when it is tested each year */
  readonly pastLife: boolean;
}

/**
 * How often a lot is tested: at half the lower end of its crop's usual life, at least every 5 years and at most once a year; each year
 * once the usual life is past; every 3 years where the usual life is not known.
 * Source: own rule, from "test more often as the lot ages; every year once short-lived" (trade practice, not verified in a source).
 */
export function yearsBetweenTests(crop: SeasonCrop | undefined, pastLife: boolean): number {
  if (pastLife) return 1;
  const life = crop?.seedLifeYearsMin ?? null;
  return life === null ? 3 : Math.min(5, Math.max(1, life / 2));
}

/**
 * A lot whose test is overdue: tested longer ago than `yearsBetweenTests`, or never tested and harvested more than a year ago (or nobody
 * knows when). A harvest is to be tested within twelve months (FAO 2014, Genebank Standards). Lots of clonal crops are not tested.
 */
export function overdueOf(lot: SeasonLot, crop: SeasonCrop | undefined, today: CivilDay): TestOverdue | null {
  const age = surelyYearsOld(lot, today);
  const life = crop?.seedLifeYearsMax ?? null;
  const pastLife = age !== null && life !== null && age > life;
  const everyYears = yearsBetweenTests(crop, pastLife);
  if (lot.lastTest === null || lot.lastTestLast === null) {
    return age === null || age > 1 ? { yearsSince: null, everyYears, pastLife } : null;
  }
  const yearsSince = Math.max(0, yearsFromDayToDay(lot.lastTestLast, today));
  return yearsSince > everyYears ? { yearsSince, everyYears, pastLife } : null;
}

/** Lots that may hold seed and whose test is overdue, the newest harvest first: that is the one that would be sown. */
export function testOverdue(records: SeasonRecords): WaitingItem<"test-overdue", TestOverdue>[] {
  const { lots, varieties, today } = records;
  const newestFirst = lots.filter(mayHoldSeed).sort((a, b) => {
    const [one, other] = [a.yearLast ?? "", b.yearLast ?? ""];
    return one === other ? 0 : one > other ? -1 : 1;
  });
  return newestFirst.flatMap((lot) => {
    const crop = varieties.get(lot.varietyId)?.crop;
    if (crop?.clonal) return [];
    const facts = overdueOf(lot, crop, today);
    if (facts === null) return [];
    const urgency = lot.gramsOnHand === null ? 2 : 1;
    return [{ rule: "test-overdue", place: "shed", urgency, varietyId: lot.varietyId, lotId: lot.id, facts }];
  });
}

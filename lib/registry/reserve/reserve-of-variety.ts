import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { Assumption } from "@/lib/science/outcome";
import { type Reserve, reserve } from "@/lib/science/reserve/reserve";
import type { SowingCount } from "@/lib/science/sowing/sowing-count";
import type { SeedCount, SeedsPerGram } from "../lots/live-seeds";
import { type Holder, holdersOf, type WordOfHolder } from "../varieties/holders";
import { type GoodLot, type LotsToCountOn, lotsToCountOn } from "./good-lots";
import { type PlantsWanted, plantsWanted } from "./plants-wanted";
import type { Holding } from "./read-holdings";
import { emergenceAssumed, sowingFor } from "./sowing-for";

/** What the reserve of a variety rests on. */
export interface ReserveQuestion {
  readonly holderId: string | null;
  readonly holdings: readonly Holding[];
  readonly words: readonly WordOfHolder[];
  readonly varietyPlantsWanted: number | null;
  readonly cropPlantsMin: number | null;
  readonly seedsPerGram: SeedsPerGram;
  readonly usualLifeYears: number | null;
  readonly settings: Pick<Settings, "renewalUrgent" | "confirmedYears">;
  readonly today: CivilDay;
}

/** A sowing worked out for one good lot. */
export interface SowingOfLot {
  readonly of: GoodLot;
  readonly sowing: SowingCount;
}

/** What one holder keeps back of one variety, over all good lots, opened to its parts. */
export interface ReserveOfVariety extends LotsToCountOn {
  readonly wanted: PlantsWanted | null;
  /** the sowing that the reserve is worked out with: that of the good lot that needs most seed */
  readonly sowing: SowingOfLot | null;
  /** null where no good lot was tested, or nobody knows how many plants are wanted */
  readonly reserve: Reserve | null;
  /** other holders who count as confirmed, and in how many places they keep it */
  readonly confirmed: readonly Holder[];
  readonly placesElsewhere: number;
  /** seeds of all good lots whose amount is known */
  readonly onHand: SeedCount;
  /** good lots of which nobody knows how many seeds they are */
  readonly uncounted: number;
  readonly assumed: readonly Assumption[];
}

/** Places beside the holder's own from which on no sowing is kept for another one. */
export const placesEnough = 2;

/**
 * The reserve of a variety and holder: one grow-out, two tests, an archive sample, and one sowing for another place unless two other
 * places are confirmed. The seeds of a sowing come from `sowingCount` for the plants wanted, with the last test of each good lot and
 * an emergence of 0.8; the lot that needs most sets the number, so that the reserve is enough whichever lot is sown.
 */
export function reserveOfVariety(question: ReserveQuestion): ReserveOfVariety {
  const { holderId, holdings, words, settings, today, usualLifeYears } = question;
  const { seedsPerGram } = question;
  const { renewalUrgent } = settings;
  const lots = lotsToCountOn(holdings, holderId, { seedsPerGram, renewalUrgent, usualLifeYears, today });
  const wanted = plantsWanted(question.varietyPlantsWanted, question.cropPlantsMin);
  const sowing = wanted ? mostSeedHungry(lots.good, wanted.plants) : null;
  const rule = { today, confirmedYears: settings.confirmedYears, usualLifeYears };
  const confirmed = holdersOf(holdings, words, rule).filter(
    (holder) => holder.confirmed && holder.stewardId !== holderId,
  );
  const placesElsewhere = confirmed.reduce((sum, holder) => sum + holder.places, 0);
  const kept = sowing && reserve({ seedsPerGrowOut: sowing.sowing.seeds, duplicates: duplicatesFor(placesElsewhere) });
  const known = lots.good.flatMap((each) => each.seeds ?? []);
  return {
    ...lots,
    wanted,
    sowing,
    reserve: kept?.ok ? kept.value : null,
    confirmed,
    placesElsewhere,
    onHand: summed(known),
    uncounted: lots.good.length - known.length,
    assumed: sowing ? [emergenceAssumed, ...sowing.sowing.assumed, ...(kept?.ok ? kept.value.assumed : [])] : [],
  };
}

function duplicatesFor(placesElsewhere: number): 0 | 1 {
  return placesElsewhere >= placesEnough ? 0 : 1;
}

function mostSeedHungry(good: readonly GoodLot[], plants: number): SowingOfLot | null {
  const sowings = good.flatMap((of): SowingOfLot[] => {
    const sowing = sowingFor(of.test, plants);
    return sowing ? [{ of, sowing }] : [];
  });
  return sowings.reduce<SowingOfLot | null>(
    (most, each) => (most === null || each.sowing.seeds > most.sowing.seeds ? each : most),
    null,
  );
}

/** Seeds of several lots together; no likeliest number where one of them has none. */
export function summed(counts: readonly SeedCount[]): SeedCount {
  return counts.reduce<SeedCount>(
    (sum, each) => ({
      value: sum.value === null || each.value === null ? null : sum.value + each.value,
      low: sum.low + each.low,
      high: sum.high + each.high,
      grade: sum.grade === "assumed" || each.grade === "assumed" ? "assumed" : "counted",
    }),
    { value: 0, low: 0, high: 0, grade: "counted" },
  );
}

import type { CivilDay } from "@/lib/science/dates/civil-day";
import { liveSeeds, type SeedCount, type SeedsPerGram, seedsIn } from "../lots/live-seeds";
import { testedTooLongAgo } from "../lots/test-age";
import { mayHoldSeed } from "../varieties/holders";
import type { Holding } from "./read-holdings";

/** A lot on which a holder can count. */
export interface GoodLot {
  readonly lot: Holding;
  readonly test: NonNullable<Holding["lastTest"]>;
  /** seeds on hand; null where the amount or the seed weight is not known */
  readonly seeds: SeedCount | null;
  readonly live: SeedCount | null;
}

/** Why a lot is not counted on. */
export type LeftOut = "no seed left" | "set aside" | "never tested" | "tests too low" | "tested too long ago";

export interface LotsToCountOn {
  readonly good: readonly GoodLot[];
  readonly leftOut: readonly { readonly lot: Holding; readonly why: LeftOut }[];
}

/** Ways in which a lot can stand that keep its seed from being sown or given. */
export const setAside: ReadonlySet<string> = new Set(["quarantine", "closed", "hold", "not for seed"]);

/** By what a lot is told to be good. */
export interface GoodLotRule {
  readonly seedsPerGram: SeedsPerGram;
  /** germination (share) at which renewing is urgent */
  readonly renewalUrgent: number;
  readonly usualLifeYears: number | null;
  readonly today: CivilDay;
}

/**
 * The good lots of a holder: seed that may be there, not set aside, tested within the usual life of the crop's seed, and not below the line
 * at which renewing is urgent. A lot that was never tested is not counted on: nobody knows whether it lives.
 */
export function lotsToCountOn(holdings: readonly Holding[], holderId: string | null, rule: GoodLotRule): LotsToCountOn {
  const good: GoodLot[] = [];
  const leftOut: { lot: Holding; why: LeftOut }[] = [];
  for (const lot of holdings) {
    if (lot.holderId !== holderId) continue;
    const test = lot.lastTest;
    if (!mayHoldSeed(lot)) leftOut.push({ lot, why: "no seed left" });
    else if (setAside.has(lot.status ?? "")) leftOut.push({ lot, why: "set aside" });
    else if (test === null) leftOut.push({ lot, why: "never tested" });
    else if (test.germination < rule.renewalUrgent) leftOut.push({ lot, why: "tests too low" });
    else if (testedTooLongAgo(test, rule.usualLifeYears, rule.today)) leftOut.push({ lot, why: "tested too long ago" });
    else {
      const seeds = seedsIn(lot.gramsOnHand, lot.thousandSeedGrams, rule.seedsPerGram);
      good.push({ lot, test, seeds, live: liveSeeds(seeds, test) });
    }
  }
  return { good, leftOut };
}

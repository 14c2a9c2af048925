import { rounded } from "@/lib/display/numbers";
import type { UnitSettings } from "@/lib/display/units";
import type { BlendCandidate } from "@/lib/registry/lots/read-blend-ground";
import { amountOfPart } from "@/lib/science/blend/amount-of-part";
import { weightAsTyped } from "../../_words/units-of";
import type { Living, Texts } from "./mix-of-form";

/** A lot with the share of the living seeds that it is to make up. */
export interface WantedShare {
  readonly lot: BlendCandidate;
  readonly living: Living;
  readonly share: number;
}

/**
 * The most living seeds that a mix of these shares can hold where of each jar at most `ofJar` is taken: the jar that is used up first
 * decides. Null where the amount or the seed weight of one is not known, or nothing of it lives.
 */
export function mostLivingSeeds(wanted: readonly WantedShare[], ofJar: number): number | null {
  const limits = wanted.map(({ lot, living, share }) => {
    if (lot.grams === null || lot.thousandSeedGrams === null || living.share <= 0 || share <= 0) return null;
    return (amountOfPart(lot.grams * ofJar, "g", lot.thousandSeedGrams).seeds * living.share) / share;
  });
  if (limits.length === 0 || limits.includes(null)) return null;
  return Math.max(0, Math.min(...limits.map((limit) => limit ?? 0)));
}

/** What is written into the fields for such a mix of so many living seeds: grams as scales show them. */
export function amountsFor(wanted: readonly WantedShare[], livingSeeds: number, units: UnitSettings): Texts {
  const texts: Record<string, string> = {};
  for (const { lot, living, share } of wanted) {
    if (lot.thousandSeedGrams === null || living.share <= 0) continue;
    const { grams } = amountOfPart((livingSeeds * share) / living.share, "seeds", lot.thousandSeedGrams);
    texts[`in.${lot.id}`] = "yes";
    texts[`unit.${lot.id}`] = "g";
    texts[`amount.${lot.id}`] = weightAsTyped(rounded(grams, grams < 10 ? 2 : 1), units);
  }
  return texts;
}

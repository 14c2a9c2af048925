import { equalSeedParents } from "@/lib/science/harvest/equal-seed-parents";
import { type EqualTaking, equalTakings } from "@/lib/science/harvest/equal-takings";
import { heaviestShare } from "@/lib/science/harvest/heaviest-share";
import { type PlotOfHarvest, type SizeOfHarvest, sizeOfHarvest } from "./size-of-harvest";

/** So many of the heaviest seed parents are spoken of together. */
export const HEAVIEST = 3;

/** An equal taking with what it would count as. */
export interface TakingWithSize extends EqualTaking {
  /** plants; null not known */
  readonly effectiveSize: number | null;
}

/** How evenly the seed parents of a harvest gave, and what equal shares would keep. */
export interface Evenness {
  /** what each gave, the heaviest first */
  readonly amounts: readonly number[];
  readonly seedParents: number;
  /** share of the seed that the heaviest few gave; null where there are no more plants than that */
  readonly heaviestShare: number | null;
  /** seed parents of equal shares that they count as */
  readonly countsAs: number;
  /** as all of it together; null where the plants that shed pollen are not known */
  readonly asGiven: SizeOfHarvest | null;
  /** the same plants in equal shares */
  readonly ifEqual: SizeOfHarvest | null;
  /** what can be taken of each in equal shares, with more and more of the smallest bags left out */
  readonly takings: readonly TakingWithSize[];
}

/** Null where there are not two seed parents whose seed was measured. */
export function evennessOf(
  amounts: readonly number[],
  plot: PlotOfHarvest,
  detasselled: number | null = null,
): Evenness | null {
  const given = amounts.filter((amount) => amount > 0).sort((one, other) => other - one);
  const countsAs = equalSeedParents(given);
  const takings = equalTakings(given);
  if (given.length < 2 || countsAs === null || !takings.ok) return null;
  const size = (seedParents: number, shares: "equal" | readonly number[]) =>
    sizeOfHarvest(plot, {
      seedParents,
      shares,
      detasselled: detasselled === null ? null : Math.min(detasselled, seedParents),
    });
  return {
    amounts: given,
    seedParents: given.length,
    heaviestShare: given.length > HEAVIEST ? heaviestShare(given, HEAVIEST) : null,
    countsAs,
    asGiven: size(given.length, given),
    ifEqual: size(given.length, "equal"),
    takings: takings.value.map((taking) => ({
      ...taking,
      effectiveSize: size(taking.bags, "equal")?.effectiveSize ?? null,
    })),
  };
}

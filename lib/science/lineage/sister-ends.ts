import { plantsKnown, rateEnds } from "@/lib/science/lineage/drift-ends";
import { plantsInCommon } from "@/lib/science/lineage/plants-in-common";
import type { Ends, GrowOutAsKnown, LotAsKnown } from "@/lib/science/lineage/span-lots";

/** An earlier harvest of the same plants, and the chance that genes of seeds of the two came from one plant. */
export interface Sister {
  readonly rank: number;
  readonly common: Ends;
}

interface Ranked {
  readonly rank: number;
  readonly lot: LotAsKnown;
}

/**
 * For each lot the harvests of the same plants that stand before it, with κ of the two at its least and at its greatest over the selfing
 * rates that there may have been. κ = Σ c c' is a parabola over the rate, since each c is a straight line: its ends lie at the ends of the
 * rate or at its turn. Source: plantsInCommon.
 */
export function sistersOf(inOrder: readonly Ranked[]): (rank: number) => readonly Sister[] {
  const before = new Map<number, Sister[]>();
  const sets = new Map<string, { rank: number; lot: GrowOutAsKnown }[]>();
  for (const { rank, lot } of inOrder) {
    if (lot.kind !== "grow-out" || lot.plants === undefined) continue;
    const set = sets.get(lot.plants) ?? [];
    sets.set(lot.plants, set);
    before.set(
      rank,
      set.map((sister) => ({ rank: sister.rank, common: commonEnds(sister.lot, lot) })),
    );
    set.push({ rank, lot });
  }
  return (rank) => before.get(rank) ?? [];
}

function commonEnds(one: GrowOutAsKnown, other: GrowOutAsKnown): Ends {
  const { low, high } = rateEnds(one.selfingRate);
  const at = (selfingRate: number): number => {
    if (!plantsKnown(one) || !plantsKnown(other)) return 0;
    return (
      plantsInCommon([
        { ...one, selfingRate },
        { ...other, selfingRate },
      ])[0]?.[1] ?? 0
    );
  };
  const [first, last] = [at(low), at(high)];
  const values = [first, last];
  if (high > low) {
    const bend = 2 * (first + last - 2 * at((low + high) / 2));
    const slope = last - first - bend;
    const turn = bend === 0 ? -1 : -slope / (2 * bend);
    if (turn > 0 && turn < 1) values.push(at(low + turn * (high - low)));
  }
  return { low: Math.min(...values), high: Math.max(...values) };
}

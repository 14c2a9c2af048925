import type { Pedigree } from "@/lib/science/lineage/pedigree";

/** Grow-outs between a lot and its founders, by rank: along the shortest line, and along the longest. */
export interface LinesOfDescent {
  readonly shortest: Int32Array;
  readonly longest: Int32Array;
}

/**
 * Generations along the shortest and the longest line of each lot: a grow-out counts one, a blend and a split none.
 *
 *     shortest(lot) = min over parents (shortest) + 1 for a grow-out;   longest with max
 *
 * Source: counted along both, since a blend of years has no one number of generations (trade.md 3.7).
 */
export function linesOfDescent({ lots, firstParent, parentRank }: Pedigree): LinesOfDescent {
  const shortest = new Int32Array(lots.length);
  const longest = new Int32Array(lots.length);
  lots.forEach((lot, rank) => {
    if (lot.kind === "founder") return;
    const step = lot.kind === "grow-out" || lot.kind === "harvest" ? 1 : 0;
    const parents = parentRank.subarray(firstParent[rank], firstParent[rank + 1]);
    shortest[rank] =
      step + parents.reduce((least, parent) => Math.min(least, shortest[parent] as number), Number.POSITIVE_INFINITY);
    longest[rank] = step + parents.reduce((most, parent) => Math.max(most, longest[parent] as number), 0);
  });
  return { shortest, longest };
}

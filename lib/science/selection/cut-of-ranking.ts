import { compareCodePoints } from "@/lib/science/code-point-order";

/** Indices nearer than this are one. */
export const SAME_INDEX = 1e-9;

export interface CutOfRanking {
  /** surely in, by code points */
  readonly kept: readonly string[];
  /** they share the cut and are more than the places left, by code points */
  readonly tied: readonly string[];
  readonly placesLeft: number;
}

/**
 * Which plants are in where so many are kept: all that lie more than 1e-9 above the index at the cut, and those at it where there is a place for
 * each; else they are tied, and nothing is decided by the order of the rows. Without an index a plant is never in.
 */
export function cutOfRanking(
  plants: readonly { readonly id: string; readonly index: number | null }[],
  keep: number,
): CutOfRanking {
  const indexed = plants.flatMap(({ id, index }) => (index === null ? [] : [{ id, index }]));
  const ids = (of: readonly { id: string }[]) => of.map(({ id }) => id).sort(compareCodePoints);
  if (keep <= 0) return { kept: [], tied: [], placesLeft: 0 };
  if (indexed.length <= keep) return { kept: ids(indexed), tied: [], placesLeft: 0 };
  const descending = [...indexed].sort((a, b) => b.index - a.index);
  const cut = descending[keep - 1]?.index ?? 0;
  const above = indexed.filter(({ index }) => index > cut + SAME_INDEX);
  const at = indexed.filter(({ index }) => Math.abs(index - cut) <= SAME_INDEX);
  if (above.length + at.length <= keep) return { kept: ids([...above, ...at]), tied: [], placesLeft: 0 };
  return { kept: ids(above), tied: ids(at), placesLeft: keep - above.length };
}

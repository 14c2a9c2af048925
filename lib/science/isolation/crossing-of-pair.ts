import type { CropProfile } from "../crops/crop-profile";
import { type CrossingPair, crossingPairs } from "../crops/crossing-pairs";

/** What of a crop decides with what it crosses. */
export type CrossingCrop = Pick<CropProfile, "key" | "crossingGroup" | "latinName">;

/** How fully pollen of one crop makes seed on another. */
export interface CrossingOfPair {
  /** none-known: two genera without a row; unknown: nobody can say */
  readonly degree: "full" | "partial" | "rare" | "none" | "none-known" | "unknown";
  /** c, 0..1: an order of magnitude; null where the degree is unknown */
  readonly factor: number | null;
  /** what it was read from */
  readonly by: "same-crop" | "pair" | "same-group" | "no-row";
  /** the row of the list, where one decided */
  readonly pair: CrossingPair | null;
}

/**
 * Whether a neighbour's pollen makes seed on our crop: (a) the same crop: fully; (b) the row of the list that holds the two, in either
 * order, the highest factor of several; (c) the same crossing group: fully; (d) else none known. Where one of the two has no crossing
 * group (a crop of one's own), or both are of one genus without a row, the list cannot say: unknown, never "none".
 *
 * Limits: factors are a judgement; a row's `direction` says who can be mother. Source: the list of crossing groups and its sources.
 */
export function crossingOfPair(
  ours: CrossingCrop,
  theirs: CrossingCrop,
  rows: readonly CrossingPair[] = crossingPairs(),
): CrossingOfPair {
  if (ours.key === theirs.key) return { degree: "full", factor: 1, by: "same-crop", pair: null };
  const pair = rows
    .filter((row) => holds(row, ours.key, theirs.key))
    .reduce<CrossingPair | null>(
      (most, row) => (most === null || (row.factor ?? 0) > (most.factor ?? 0) ? row : most),
      null,
    );
  if (pair) return { degree: pair.degree as CrossingOfPair["degree"], factor: pair.factor, by: "pair", pair };
  if (ours.crossingGroup !== null && ours.crossingGroup === theirs.crossingGroup)
    return { degree: "full", factor: 1, by: "same-group", pair: null };
  const open = ours.crossingGroup === null || theirs.crossingGroup === null || sameGenus(ours, theirs);
  return open
    ? { degree: "unknown", factor: null, by: "no-row", pair: null }
    : { degree: "none-known", factor: 0, by: "no-row", pair: null };
}

function holds(row: CrossingPair, ours: string, theirs: string): boolean {
  const { cropKeysA, cropKeysB } = row;
  return (
    (cropKeysA.includes(ours) && cropKeysB.includes(theirs)) || (cropKeysA.includes(theirs) && cropKeysB.includes(ours))
  );
}

function sameGenus(ours: CrossingCrop, theirs: CrossingCrop): boolean {
  const [one] = (ours.latinName ?? "").split(" ");
  const [other] = (theirs.latinName ?? "").split(" ");
  return one !== "" && one === other;
}

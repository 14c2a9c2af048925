import { type HarvestOfGrowOut, keptParents, type SeedParent } from "./harvest";

/** What each seed parent gave, all in one unit; null where that is not known of all. */
export interface AmountsOfParents {
  readonly unit: "g" | "seeds";
  readonly amounts: readonly number[];
}

/** What the seed parents gave, in grams where all were weighed, else in seeds where all were counted. */
export function amountsOf(parents: readonly Pick<SeedParent, "grams" | "seeds" | "lost">[]): AmountsOfParents | null {
  const kept = keptParents(parents);
  if (kept.length === 0) return null;
  const grams = kept.flatMap((parent) => parent.grams ?? []);
  if (grams.length === kept.length) return { unit: "g", amounts: grams };
  const seeds = kept.flatMap((parent) => parent.seeds ?? []);
  return seeds.length === kept.length ? { unit: "seeds", amounts: seeds } : null;
}

/**
 * The shares of the seed parents in a lot, one a parent in the order of `parents`, or "equal". Put together in equal seeds or equal weight
 * they are equal whatever each gave; all together, or kept apart and not yet put together, they are as what each gave. One alone gave all.
 * Null: not known. Seed weight stands for seed number: plants of one grow-out are taken to bear seeds of one size.
 */
export function sharesOfHarvest(harvest: HarvestOfGrowOut): "equal" | readonly number[] | null {
  const { bulked, seedParents } = harvest;
  if (seedParents === null) return null;
  if (bulked === "equal seeds" || bulked === "equal weight" || seedParents === 1) return "equal";
  const amounts = amountsOf(harvest.parents)?.amounts;
  const shares = keptParents(harvest.parents).flatMap(({ share }) => share ?? []);
  const known = [amounts, shares].find((list) => list !== undefined && list.length === seedParents);
  if (!known || known.every((share) => share === 0)) return null;
  return known.every((share) => share === known[0]) ? "equal" : known;
}

/** The share of each seed parent as it is stored: of the kept ones only, of all 1 together; null where not known. */
export function storedShares(harvest: HarvestOfGrowOut): readonly (number | null)[] {
  const shares = sharesOfHarvest(harvest);
  const kept = keptParents(harvest.parents).length;
  const list = shares === "equal" ? new Array<number>(kept).fill(1) : shares;
  const sum = shares === "equal" ? (harvest.seedParents ?? 0) : (list?.reduce((total, share) => total + share, 0) ?? 0);
  let place = 0;
  return harvest.parents.map(({ lost }) => {
    if (lost !== null || !list || list.length !== kept || sum === 0) return null;
    const share = list[place] ?? 0;
    place += 1;
    return share / sum;
  });
}

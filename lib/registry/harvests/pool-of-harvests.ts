import { byPlant, type HarvestOfGrowOut, keptParents } from "./harvest";
import { amountsOf, sharesOfHarvest } from "./shares-of-harvest";

/** All lots of one grow-out are one pool in the lineage: its seed parents over all harvests, and what they gave. */
export interface PoolOfHarvests {
  readonly seedParents: number;
  /** the most they can be: all of them other plants; as many as `seedParents` where every plant is known */
  readonly seedParentsAtMost: number;
  /** the shares of the pool; null: not known */
  readonly shares: "equal" | readonly number[] | null;
  /** what each plant gave over all harvests, in grams; only where every bag was weighed and every plant is known */
  readonly gramsOfPlants: ReadonlyMap<string, number> | null;
  /** plants whose seed is in the pool, as far as they are known */
  readonly plants: ReadonlySet<string>;
  /** seed parents that had their tassels taken, at least; null: nobody said */
  readonly detasselled: number | null;
}

/**
 * The seed parents of all harvests of one grow-out together. Plants that are known are counted once and what they gave is added; plants
 * that were only counted are read with caution: the same plants in every harvest (the largest count; at most the sum), the one that gave
 * most in one harvest giving most in the others, so that no reading gives a smaller effective size for these counts.
 * Null where no harvest says how many seed parents it had.
 */
export function poolOfHarvests(harvests: readonly HarvestOfGrowOut[]): PoolOfHarvests | null {
  const counted = harvests.filter(({ seedParents }) => seedParents !== null && seedParents > 0);
  if (counted.length === 0) return null;
  const known = counted.filter(byPlant);
  const others = counted.filter((harvest) => !byPlant(harvest));
  const plants = new Set(known.flatMap((harvest) => plantsOf(harvest)));
  const seedParents = Math.max(plants.size, ...others.map((harvest) => harvest.seedParents ?? 0));
  const weighed = others.length === 0 ? gramsOfPlants(known) : null;
  return {
    seedParents,
    seedParentsAtMost: plants.size + others.reduce((sum, harvest) => sum + (harvest.seedParents ?? 0), 0),
    shares: weighed ? equalOr([...weighed.values()]) : sharesOfPool(counted, known, others, seedParents),
    gramsOfPlants: weighed,
    plants: new Set(counted.flatMap((harvest) => plantsOf(harvest))),
    detasselled: detasselledOf(counted, seedParents),
  };
}

function plantsOf(harvest: HarvestOfGrowOut): string[] {
  return keptParents(harvest.parents).flatMap(({ plantId }) => plantId ?? []);
}

function sharesOfPool(
  counted: readonly HarvestOfGrowOut[],
  known: readonly HarvestOfGrowOut[],
  others: readonly HarvestOfGrowOut[],
  seedParents: number,
): PoolOfHarvests["shares"] {
  const [only] = counted;
  if (only && counted.length === 1) return sharesOfHarvest(only);
  const samePlants = counted.every((harvest) => harvest.seedParents === seedParents);
  if (samePlants && counted.every((harvest) => sharesOfHarvest(harvest) === "equal")) return "equal";
  const units = ["grams", "seeds"] as const;
  const unit = units.find((each) => counted.every((harvest) => amountOf(harvest, each) !== null));
  if (!unit) return null;
  const ofPlants = new Map<string, number>();
  for (const harvest of known) {
    const given = givenBy(harvest, unit);
    if (!given) return null;
    for (const [place, plant] of plantsOf(harvest).entries())
      ofPlants.set(plant, (ofPlants.get(plant) ?? 0) + (given[place] ?? 0));
  }
  const lists: (readonly number[])[] = [[...ofPlants.values()]];
  for (const harvest of others) {
    const given = givenBy(harvest, unit);
    if (!given) return null;
    lists.push(given);
  }
  const sums = new Array<number>(seedParents).fill(0);
  for (const list of lists)
    for (const [rank, amount] of list.toSorted((one, other) => other - one).entries())
      sums[rank] = (sums[rank] ?? 0) + amount;
  return equalOr(sums);
}

function equalOr(amounts: readonly number[]): "equal" | readonly number[] {
  const [first = 0] = amounts;
  return amounts.every((amount) => Math.abs(amount - first) <= first * 1e-9) ? "equal" : amounts;
}

/** All seed of a harvest: as it was measured, else the sum of its bags. */
function amountOf(harvest: HarvestOfGrowOut, unit: "grams" | "seeds"): number | null {
  const whole = harvest[unit];
  if (whole !== null && whole > 0) return whole;
  const bags = amountsOf(harvest.parents);
  const alike = bags?.unit === (unit === "grams" ? "g" : "seeds");
  const putTogether = harvest.bulked === "all together" || harvest.bulked === "kept apart" || harvest.bulked === null;
  return bags && alike && putTogether ? bags.amounts.reduce((sum, amount) => sum + amount, 0) : null;
}

/** What each kept seed parent gave to the lot, in the unit asked for. */
function givenBy(harvest: HarvestOfGrowOut, unit: "grams" | "seeds"): number[] | null {
  const shares = sharesOfHarvest(harvest);
  const amount = amountOf(harvest, unit);
  if (shares === null || amount === null || harvest.seedParents === null) return null;
  const list = shares === "equal" ? new Array<number>(harvest.seedParents).fill(1) : shares;
  const sum = list.reduce((total, share) => total + share, 0);
  return list.map((share) => (share / sum) * amount);
}

/** Grams of each plant, where every bag of every harvest was weighed and went in as it was. */
function gramsOfPlants(known: readonly HarvestOfGrowOut[]): ReadonlyMap<string, number> | null {
  const grams = new Map<string, number>();
  for (const harvest of known) {
    const bags = amountsOf(harvest.parents);
    const asTheyWere = harvest.bulked !== "equal seeds" && harvest.bulked !== "equal weight";
    if (bags?.unit !== "g" || !asTheyWere) return null;
    for (const [place, plant] of plantsOf(harvest).entries())
      grams.set(plant, (grams.get(plant) ?? 0) + (bags.amounts[place] ?? 0));
  }
  return grams;
}

/**
 * At least so many seed parents of the pool were without their tassels: those of the harvest that had most, and all but the ones that
 * some harvest counts as having kept theirs.
 */
function detasselledOf(counted: readonly HarvestOfGrowOut[], seedParents: number): number | null {
  if (counted.every(({ detasselled }) => detasselled === null)) return null;
  const most = Math.max(...counted.map(({ detasselled }) => detasselled ?? 0));
  const withTassels = counted.reduce(
    (sum, harvest) => sum + (harvest.seedParents ?? 0) - (harvest.detasselled ?? 0),
    0,
  );
  return Math.max(most, seedParents - withTassels);
}

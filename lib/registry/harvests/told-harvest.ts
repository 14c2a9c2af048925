import { uuidv7 } from "uuidv7";
import type { ChangeWriter } from "../change-set/writer";
import { standingEntries } from "../ledger/balance";
import type { GrowOutForHarvest } from "./grow-out-for-harvest";
import type { HarvestOfGrowOut, SeedParent } from "./harvest";

/**
 * What a notebook told of the seed parents of lots that were harvested before, as a harvest of its own, so that the first harvest entered
 * here adds to it and does not take its place. Null where nothing was told, or no lot came of it, or its harvests are on record.
 */
export async function writeToldHarvest(
  change: ChangeWriter,
  growOut: GrowOutForHarvest,
): Promise<HarvestOfGrowOut | null> {
  const { seedParents, harvests, lots } = growOut;
  if (seedParents === null || seedParents < 1 || harvests.some((harvest) => harvest.seedParents !== null)) return null;
  const earlier = lots.filter(({ id }) => !harvests.some(({ lotId }) => lotId === id));
  const [only] = earlier;
  if (!only) return null;
  const id = uuidv7();
  const told = {
    id,
    growOutId: growOut.id,
    lotId: earlier.length === 1 ? only.id : null,
    seedParents,
    detasselled: growOut.seedParentsDetasselled,
    grams: gramsHarvested(earlier),
    seeds: null,
    bulked: null,
    ...(earlier.length === 1 ? { on: only.year, onFirst: only.yearFirst, onLast: only.yearLast } : {}),
    note: "as the notebook told it",
  };
  const parents = parentsTold(growOut);
  await change.create("Harvest", told);
  await change.createAll(
    "HarvestSeedParent",
    parents.map((parent) => ({ id: uuidv7(), harvestId: id, ...parent })),
  );
  return { ...told, parents };
}

/** Grams of all that was harvested into some lots; null where an entry has no weight, or none stands. */
function gramsHarvested(lots: GrowOutForHarvest["lots"]): number | null {
  const entries = lots.flatMap((lot) => standingEntries(lot.ledger).filter(({ entry }) => entry.kind === "harvested"));
  if (entries.length === 0 || entries.some(({ entry }) => entry.unit !== "g")) return null;
  return entries.reduce((sum, { entry }) => sum + entry.amount, 0);
}

function parentsTold({ seedShares, seedParents, plants }: GrowOutForHarvest): SeedParent[] {
  const nothing = { plantId: null, grams: null, seeds: null, share: null, lost: null };
  if (seedShares === "equal" && seedParents !== null)
    return Array.from({ length: seedParents }, () => ({ ...nothing, share: 1 / seedParents }));
  if (seedShares !== "plants") return [];
  return plants.filter(({ kept }) => kept).map(({ id, seedGrams }) => ({ ...nothing, plantId: id, grams: seedGrams }));
}

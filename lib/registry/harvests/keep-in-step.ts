import { coefficientOfVariation } from "@/lib/science/harvest/coefficient-of-variation";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import type { PatchOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import type { GrowOutForHarvest } from "./grow-out-for-harvest";
import { type HarvestOfGrowOut, keptParents } from "./harvest";
import { poolFaults } from "./harvest-faults";
import { poolOfHarvests } from "./pool-of-harvests";

/**
 * Writes what the harvests of a grow-out say together onto the grow-out and its plants, where the figures and the notebook read it: seed
 * parents, their shares, those without tassels; of each plant whether its seed is kept and what it gave. Marks get the plant's fate.
 * Refused: what poolFaults refuses.
 */
export async function keepInStep(
  change: ChangeWriter,
  growOut: GrowOutForHarvest,
  harvests: readonly HarvestOfGrowOut[],
  detasselled: number | null,
): Promise<Outcome<null>> {
  const pool = poolOfHarvests(harvests);
  if (pool === null) return accepted(null);
  const ofAll = detasselled ?? growOut.detasselled;
  const faults = poolFaults(growOut, pool, ofAll);
  if (faults.length > 0) return refused(...faults);
  const plants = plantPatches(growOut, harvests, pool.plants);
  await change.updateMany("Plant", plants);
  const kept = keptAfter(growOut, plants);
  const weighed = pool.gramsOfPlants;
  const asPlants = weighed !== null && kept.size === weighed.size && [...kept].every((id) => weighed.has(id));
  await change.update("GrowOut", growOut.id, {
    seedParents: pool.seedParents,
    ...sharesStored(pool.shares, asPlants),
    seedParentsDetasselled: pool.detasselled,
    detasselled: ofAll,
  });
  await change.updateMany("Mark", markPatches(growOut, harvests, pool.plants));
  return accepted(null);
}

function sharesStored(
  shares: "equal" | readonly number[] | null,
  asPlants: boolean,
): Pick<PatchOf<"GrowOut">, "seedShares" | "seedSharesCv"> {
  if (shares === null) return { seedShares: null, seedSharesCv: null };
  if (shares === "equal") return { seedShares: "equal", seedSharesCv: null };
  if (asPlants) return { seedShares: "plants", seedSharesCv: null };
  return { seedShares: "cv", seedSharesCv: coefficientOfVariation(shares) };
}

type PlantPatch = { id: string; patch: PatchOf<"Plant"> };

/** Plants of the pool are kept; lost ones are not; of one that a correction left out nothing is known again. */
function plantPatches(
  growOut: GrowOutForHarvest,
  harvests: readonly HarvestOfGrowOut[],
  inPool: ReadonlySet<string>,
): PlantPatch[] {
  const lost = plantsLost(harvests);
  const before = plantsBefore(growOut);
  const grams = gramsGiven(harvests);
  return growOut.plants.flatMap(({ id, sameAsId, kept }): PlantPatch[] => {
    // What another record of the plant gave stands with the one that leads.
    if (sameAsId !== null) return kept === null ? [] : [{ id, patch: { kept: null, seedGrams: null } }];
    const given = grams.get(id);
    if (inPool.has(id)) return [{ id, patch: { kept: true, ...(given === undefined ? {} : { seedGrams: given }) } }];
    if (lost.has(id)) return [{ id, patch: { kept: false } }];
    return before.has(id) ? [{ id, patch: { kept: null, seedGrams: null } }] : [];
  });
}

/** Plants that the harvests name as they stood before the change. */
function plantsBefore({ harvests }: GrowOutForHarvest): ReadonlySet<string> {
  return new Set(harvests.flatMap(({ parents }) => parents.flatMap(({ plantId }) => plantId ?? [])));
}

/** Grams of each plant over all harvests; none where a harvest with seed of it did not weigh it. */
function gramsGiven(harvests: readonly HarvestOfGrowOut[]): ReadonlyMap<string, number | undefined> {
  const grams = new Map<string, number | undefined>();
  for (const { plantId, grams: given } of harvests.flatMap(({ parents }) => keptParents(parents))) {
    if (plantId === null) continue;
    const sum = grams.has(plantId) ? grams.get(plantId) : 0;
    grams.set(plantId, given === null || sum === undefined ? undefined : sum + given);
  }
  return grams;
}

function plantsLost(harvests: readonly HarvestOfGrowOut[]): ReadonlySet<string> {
  const lost = harvests.flatMap(({ parents }) => parents.filter((parent) => parent.lost !== null));
  return new Set(lost.flatMap(({ plantId }) => plantId ?? []));
}

/** The plants that count as kept once the patches are written. */
function keptAfter({ plants }: GrowOutForHarvest, patches: readonly PlantPatch[]): ReadonlySet<string> {
  const patched = new Map(patches.map(({ id, patch }) => [id, patch.kept]));
  return new Set(plants.filter(({ id, kept }) => (patched.has(id) ? patched.get(id) : kept)).map(({ id }) => id));
}

/** The mark that stands last on a plant says what became of it, unless somebody wrote something else there. */
function markPatches(
  growOut: GrowOutForHarvest,
  harvests: readonly HarvestOfGrowOut[],
  inPool: ReadonlySet<string>,
): { id: string; patch: PatchOf<"Mark"> }[] {
  const lost = plantsLost(harvests);
  const before = plantsBefore(growOut);
  return growOut.plants.flatMap(({ id, marks }) => {
    if (!inPool.has(id) && !lost.has(id) && !before.has(id)) return [];
    const replaced = new Set(marks.map(({ replacesId }) => replacesId));
    const last = marks.filter((mark) => !replaced.has(mark.id)).at(-1);
    const ours = last && (last.fate === null || last.fate === "harvested" || last.fate === "lost");
    if (!last || !ours) return [];
    const fate = inPool.has(id) ? "harvested" : lost.has(id) ? "lost" : null;
    return last.fate === fate ? [] : [{ id: last.id, patch: { fate } }];
  });
}

import type { UnitSettings } from "@/lib/display/units";
import type { SentHarvest } from "@/lib/registry/field/enter-sent-harvest";
import type { HarvestRead, HarvestsRead, PlantForHarvest } from "@/lib/registry/harvests/read-harvests";
import { separateSexes } from "@/lib/science/crops/mating";
import { weightAsTyped } from "../../lots/_words/units-of";
import type { HarvestGround } from "./harvest-fields";

/** What a harvest's form knows of its grow-out. */
export function groundOf(read: HarvestsRead, units: UnitSettings): HarvestGround {
  const { matingSystem } = read.plot.mating;
  const tassels =
    !separateSexes(read.plot.mating) && matingSystem === "outcrossing" && read.crop.key.startsWith("maize");
  return {
    plot: read.plot,
    plants: inOrder(read.plants),
    tassels: tassels || read.growOut.detasselled !== null,
    units,
  };
}

/** Marked to be kept, or written down as kept where nobody marked it. */
function toKeep({ intent, kept }: PlantForHarvest): boolean {
  return intent === "keep" || (intent === null && kept === true);
}

/** Plants marked to keep first, then those to watch, then the others, each in the order of entry. */
export function inOrder(plants: readonly PlantForHarvest[]): PlantForHarvest[] {
  const rank = (plant: PlantForHarvest) =>
    toKeep(plant) ? 0 : plant.intent === "watch" ? 1 : plant.intent === null ? 2 : 3;
  return plants.toSorted((one, other) => rank(one) - rank(other));
}

/** What stands in the form of a new harvest. */
export function startOfHarvest(
  read: HarvestsRead,
  { today, number, holder }: { today: string; number: string; holder: string },
): Record<string, string> {
  const plants = inOrder(read.plants);
  const harvested = new Set(read.harvests.flatMap(({ kept }) => kept.map(({ plantId }) => plantId)));
  const fates = plants.map((plant) => (toKeep(plant) && !harvested.has(plant.id) ? "kept" : "not taken"));
  return {
    told: fates.includes("kept") ? "plants" : "count",
    each: "grams",
    bulked: "",
    on: today,
    number,
    holder,
    detasselled: read.growOut.detasselled === null ? "" : String(read.growOut.detasselled),
    ...Object.fromEntries(fates.map((fate, row) => [`plants.${row}.fate`, fate])),
  };
}

/** A new harvest as a phone recorded it, laid over what would stand in its form. */
export function startOfSentHarvest(
  read: HarvestsRead,
  sent: SentHarvest,
  start: Readonly<Record<string, string>>,
  units: UnitSettings,
): Record<string, string> {
  const seeds = sent.parts.some((part) => part.grams === null && part.seeds !== null);
  const rows = inOrder(read.plants).flatMap(({ id }, row) => {
    const part = sent.parts.find(({ plantId }) => plantId === id);
    const amount = seeds ? part?.seeds : part?.grams;
    const typed = amount == null ? "" : seeds ? String(amount) : weightAsTyped(amount, units);
    return [[`plants.${row}.fate`, part?.fate ?? "not taken"] as const, [`plants.${row}.amount`, typed] as const];
  });
  return {
    ...start,
    ...{ told: "plants", each: seeds ? "seeds" : "grams", bulked: sent.bulked, on: sent.on, note: sent.note ?? "" },
    ...Object.fromEntries(rows),
  };
}

/** A harvest as its form would have held it. */
export function startOfCorrection(
  read: HarvestsRead,
  harvest: HarvestRead,
  units: UnitSettings,
): Record<string, string> {
  const plants = inOrder(read.plants);
  const named = harvest.parents.some(({ plantId }) => plantId !== null);
  const seeds = harvest.parents.some((parent) => parent.grams === null && parent.seeds !== null);
  const amount = (parent: { grams: number | null; seeds: number | null }) =>
    parent.grams !== null ? weightAsTyped(parent.grams, units) : parent.seeds === null ? "" : String(parent.seeds);
  // Parents of whom only a share is on record would be as many empty rows.
  const bare = harvest.parents.every((parent) => parent.plantId === null && amount(parent) === "" && !parent.lost);
  const rows = named
    ? plants.flatMap(({ id }, row) => {
        const parent = harvest.parents.find(({ plantId }) => plantId === id);
        const fate = parent ? fateOf(parent.lost) : "not taken";
        return [[`plants.${row}.fate`, fate] as const, [`plants.${row}.amount`, parent ? amount(parent) : ""] as const];
      })
    : harvest.parents.flatMap((parent, row) => [
        [`bags.${row}.fate`, fateOf(parent.lost)] as const,
        [`bags.${row}.amount`, amount(parent)] as const,
      ]);
  const text = (value: number | null) => (value === null ? "" : String(value));
  return {
    told: named ? "plants" : "count",
    seedParents: text(harvest.seedParents),
    each: bare ? "nothing" : seeds ? "seeds" : "grams",
    bulked: harvest.bulked ?? "",
    grams: harvest.grams === null ? "" : weightAsTyped(harvest.grams, units),
    seeds: text(harvest.seeds),
    mouldyPercent: harvest.mouldyShare === null ? "" : String(Number((harvest.mouldyShare * 100).toPrecision(6))),
    detasselled: text(read.growOut.detasselled),
    seedParentsDetasselled: text(harvest.detasselled),
    on: harvest.on ?? "",
    note: harvest.note ?? "",
    ...Object.fromEntries(rows),
  };
}

/** What became of a bag, as the form words it. */
function fateOf(lost: string | null): string {
  return lost === null ? "kept" : `lost: ${lost}`;
}

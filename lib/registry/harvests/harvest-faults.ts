import type { HarvestInput, ToldParent } from "@/lib/schemas/harvests/harvest-entry";
import { notTaken } from "@/lib/schemas/harvests/harvest-entry";
import { separateSexes } from "@/lib/science/crops/mating";
import { type Refusal, refusal } from "@/lib/science/outcome";
import type { GrowOutForHarvest } from "./grow-out-for-harvest";
import { keptParents } from "./harvest";
import type { PoolOfHarvests } from "./pool-of-harvests";

/** Scales and spillage: so much more than its parts a whole may weigh. */
const WEIGHING_ERROR_GRAMS = 0.5;
const WEIGHING_ERROR_SHARE = 0.01;

/** Plants whose seed is in the lot, as it was told. */
export function seedParentsTold({
  seedParents,
  parents,
}: {
  readonly seedParents: number | null;
  readonly parents: readonly { readonly lost: string | null }[];
}): number | null {
  return seedParents ?? (parents.length > 0 ? keptParents(parents).length : null);
}

/**
 * What cannot be of a harvest by itself: no seed parents, plants of another grow-out or named twice, fewer bags than seed parents, amounts
 * that do not go together with the whole.
 */
export function harvestFaults(input: HarvestInput, growOut: GrowOutForHarvest): Refusal[] {
  const faults = [...plantFaults(input, growOut), ...countFaults(input)];
  return faults.length > 0 ? faults : wholeFaults(input);
}

function plantFaults({ parents }: HarvestInput, growOut: GrowOutForHarvest): Refusal[] {
  const names = new Map(growOut.plants.map(({ id, name }) => [id, name]));
  const seen = new Set<string>();
  return parents.flatMap(({ row, plantId, grams, seeds, lost }): Refusal[] => {
    const at = ["parents", row];
    const amount = grams ?? seeds;
    if (lost === notTaken) {
      const wrong = "stands here, and the plant is not taken";
      return [
        refusal(
          "amount-of-none",
          [...at, "amount"],
          amount,
          wrong,
          "choose that its seed is kept or lost, or empty the cell",
        ),
      ];
    }
    if (seeds !== null && !Number.isInteger(seeds))
      return [refusal("seeds-not-whole", [...at, "amount"], seeds, "is no number of seeds", "write a whole number")];
    if (plantId === null) return [];
    const name = names.get(plantId);
    if (name === undefined) {
      const needed = "choose plants that were marked in this one";
      return [refusal("plant-of-another", [...at, "fate"], plantId, `is no plant of grow-out ${growOut.name}`, needed)];
    }
    if (seen.has(plantId))
      return [refusal("plant-twice", [...at, "fate"], name, "stands here twice", "give each plant one row")];
    seen.add(plantId);
    return [];
  });
}

function countFaults(input: HarvestInput): Refusal[] {
  const kept = keptParents(input.parents).length;
  const told = seedParentsTold(input);
  if (told === null)
    return [refusal("no-plants", ["seedParents"], "", "stands here", "say how many plants gave seed, or which")];
  if (told === 0) {
    const needed = "one plant at least gives a lot; where no seed came, write that as the outcome of the grow-out";
    return [refusal("no-plants", ["seedParents"], 0, "plants are left whose seed was not lost", needed)];
  }
  const without = input.seedParentsDetasselled ?? 0;
  if (without > told) {
    const wrong = `of ${told} seed parents cannot be without their tassels`;
    return [
      refusal("more-detasselled-than-parents", ["seedParentsDetasselled"], without, wrong, `write at most ${told}`),
    ];
  }
  if (input.seedParents !== null && kept > input.seedParents) {
    const needed = `write ${kept}, or empty the bags that are too many`;
    return [
      refusal("more-bags-than-parents", ["seedParents"], input.seedParents, `seed parents gave ${kept} bags`, needed),
    ];
  }
  return [];
}

/** What lies together against what each gave. */
function wholeFaults(input: HarvestInput): Refusal[] {
  const told = seedParentsTold(input) ?? 0;
  const kept = keptParents(input.parents);
  if (kept.length < told) return [];
  return [
    ...wholeFault(input, kept, "grams", "g", WEIGHING_ERROR_GRAMS),
    ...wholeFault(input, kept, "seeds", "seeds", 0),
  ];
}

function wholeFault(
  { bulked, ...input }: HarvestInput,
  kept: readonly ToldParent[],
  unit: "grams" | "seeds",
  word: string,
  slack: number,
): Refusal[] {
  const whole = input[unit];
  const each = kept.flatMap((parent) => parent[unit] ?? []);
  if (whole === null || each.length < kept.length) return [];
  const equal = bulked === (unit === "grams" ? "equal weight" : "equal seeds");
  const sum = each.reduce((total, amount) => total + amount, 0);
  const most = equal ? each.length * Math.min(...each) : sum;
  if (whole <= most * (1 + WEIGHING_ERROR_SHARE) + slack) return [];
  const shown = Number(most.toPrecision(6));
  const wrong = equal
    ? `${word} cannot come of equal parts: ${each.length} times the smallest, ${Math.min(...each)} ${word}, is ${shown}`
    : `${word} is more than the ${shown} ${word} that the plants gave`;
  const needed = equal
    ? `write at most ${shown}, leave the smallest out, or say that it was put all together`
    : "weigh the whole again, or the bags";
  return [refusal("whole-above-parts", [unit], whole, wrong, needed)];
}

/** What the harvests of a grow-out together may not be: more seed parents than plants that could give them, or than had their tassels. */
export function poolFaults(
  growOut: Pick<GrowOutForHarvest, "plantsStanding" | "malesStanding" | "roguedBeforePollen" | "profile">,
  pool: Pick<PoolOfHarvests, "seedParents" | "detasselled">,
  detasselled: number | null,
): Refusal[] {
  const { plantsStanding, malesStanding, roguedBeforePollen, profile } = growOut;
  const separate = separateSexes(profile);
  const flowering = plantsStanding === null ? null : plantsStanding - (roguedBeforePollen ?? 0);
  const able = flowering === null ? null : separate ? flowering - (malesStanding ?? 0) : flowering;
  if (able !== null && pool.seedParents > able) {
    const whose = separate ? "females that were left to flower" : "plants that were left to shed pollen";
    const needed = "count again, or put the plants standing and those rogued before pollen shed right first";
    const wrong = `seed parents are more than the ${able} ${whose}`;
    return [refusal("more-seed-than-pollen-parents", ["seedParents"], pool.seedParents, wrong, needed)];
  }
  if ((detasselled ?? 0) === 0 && (pool.detasselled ?? 0) === 0) return [];
  if (separate) {
    const needed = "leave it empty: males and females are plants of their own here";
    const given = detasselled || pool.detasselled;
    return [refusal("no-tassels", ["detasselled"], given, "does not go with separate sexes", needed)];
  }
  return tasselFaults(detasselled ?? pool.detasselled ?? 0, pool, flowering);
}

/** `taken`: tassels of the whole grow-out. */
function tasselFaults(
  taken: number,
  pool: Pick<PoolOfHarvests, "seedParents" | "detasselled">,
  flowering: number | null,
): Refusal[] {
  const path = ["detasselled"];
  const ofParents = pool.detasselled ?? 0;
  if (ofParents > taken) {
    const needed = `they are among all that had them taken: write ${ofParents} or more`;
    const wrong = `is less than the ${ofParents} seed parents without their tassels`;
    return [refusal("more-detasselled-than-all", path, taken, wrong, needed)];
  }
  if (flowering === null) return [];
  if (taken >= flowering) {
    const needed = "somebody must shed: write fewer, or put the plants standing right first";
    return [refusal("no-pollen-left", path, taken, `of the ${flowering} plants leaves no pollen`, needed)];
  }
  const others = taken - ofParents;
  const able = flowering - pool.seedParents;
  if (pool.detasselled === null || others <= able) return [];
  const needed = `only ${able} plants are no seed parents: count the seed parents without tassels again`;
  return [
    refusal("more-detasselled-than-others", path, taken, `leaves ${others} other plants without tassels`, needed),
  ];
}

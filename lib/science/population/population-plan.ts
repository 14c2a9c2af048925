import { effectiveSize } from "@/lib/science/effective-size/effective-size";
import type { Sexes } from "@/lib/science/effective-size/plot-parents";
import { faultsAmong, notNegativeFault, positiveFault, shareAboveZeroFault, shareFault } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { guardedCeiling, reaches } from "@/lib/science/whole-steps";

export interface PopulationPlanInput {
  /** share of the diversity to keep, 0 to below 1 */
  readonly retain: number;
  readonly years: number;
  readonly yearsBetweenGrowOuts: number;
  /** share of the flowering plants (separate sexes: of the females) that give seed, above 0 to 1; default 1 */
  readonly seedParentShare?: number;
  readonly sexes?: Sexes;
  readonly selfingRate?: number;
  /** F; default 0 */
  readonly inbreeding?: number;
  /** coefficient of variation of the seed that the seed parents give; default 0 */
  readonly seedCv?: number;
}

export interface PopulationPlan {
  /** grow-outs in those years */
  readonly generations: number;
  /** Ne that each needs, plants */
  readonly effectiveSizeNeeded: number;
  /** plants to bring to flower; separate sexes: males and females, half each */
  readonly floweringPlants: number;
  readonly seedParents: number;
  readonly assumed: readonly Assumption[];
}

/** No plot holds more; it keeps the search finite. */
const MOST_PLANTS = 2 ** 50;

/**
 * How many plants keep what must be kept over the years.
 *
 *     generations t = ⌈years / years between grow-outs⌉          needed Ne = 1 / (2 (1 − retain^(1/t)))
 *     the fewest flowering plants of which ⌈share·N⌉ give seed whose effectiveSize reaches it
 *
 * Refused: all of the diversity wanted, years not above 0, shares outside 0 to 1, selfing with separate sexes.
 * Limits: as effectiveSize; fewer grow-outs (seed kept longer) help as much as more plants. Example: 90 % over 20 grow-outs: Ne 95.2.
 * Source: H = (1 − 1/(2Ne))ᵗ, Wright 1931, Genetics 16:97-159, turned round.
 */
export function populationPlan(input: PopulationPlanInput): Outcome<PopulationPlan> {
  const faults = planFaults(input);
  if (faults.length > 0) return refused(...faults);
  const generations = guardedCeiling(input.years / input.yearsBetweenGrowOuts);
  const effectiveSizeNeeded = -1 / (2 * Math.expm1(Math.log(input.retain) / generations));
  const groups = fewestGroups((count) => {
    const size = sizeOf(input, count);
    return size !== null && reaches(size, effectiveSizeNeeded);
  });
  if (groups === null) {
    const needed = "no plot holds so many plants: keep less, for fewer years, or grow out less often";
    return refused(refusal("too-many-plants", ["retain"], input.retain, "cannot be kept", needed));
  }
  return accepted({
    generations,
    effectiveSizeNeeded,
    floweringPlants: input.sexes === "separate" ? 2 * groups : groups,
    seedParents: seedParentsOf(input, groups),
    assumed: assumedOf(input),
  });
}

function seedParentsOf({ seedParentShare = 1 }: PopulationPlanInput, group: number): number {
  return Math.min(group, Math.max(1, guardedCeiling(seedParentShare * group)));
}

/** Ne of so many pollen parents (separate sexes: so many males and as many females), or null where the spread of seed is impossible. */
function sizeOf(input: PopulationPlanInput, group: number): number | null {
  const size = effectiveSize({
    pollenParents: group,
    seedParents: seedParentsOf(input, group),
    sexes: input.sexes,
    selfingRate: input.selfingRate,
    inbreeding: input.inbreeding,
    seedShares: { cv: input.seedCv ?? 0 },
    pollenShares: "equal",
  });
  return size.ok ? size.value.effectiveSize : null;
}

/** The smallest number from 1 on that is enough: more never are too few. */
function fewestGroups(enough: (count: number) => boolean): number | null {
  let high = 1;
  while (!enough(high)) {
    high *= 2;
    if (high > MOST_PLANTS) return null;
  }
  let low = high === 1 ? 0 : high / 2;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
}

function planFaults(input: PopulationPlanInput): Refusal[] {
  const faults = faultsAmong(
    shareFault([], "retain", input.retain),
    positiveFault([], "years", input.years),
    positiveFault([], "yearsBetweenGrowOuts", input.yearsBetweenGrowOuts),
    shareAboveZeroFault([], "seedParentShare", input.seedParentShare),
    shareFault([], "selfingRate", input.selfingRate),
    shareFault([], "inbreeding", input.inbreeding),
    notNegativeFault([], "seedCv", input.seedCv),
  );
  if (input.retain === 1) {
    const needed = "every grow-out loses something: keep less than all";
    faults.push(refusal("all-kept", ["retain"], 1, "cannot be kept", needed));
  }
  if (input.sexes === "separate" && (input.selfingRate ?? 0) > 0) {
    const needed = "where the sexes are separate no plant selfs: leave it out or write 0";
    const wrong = "cannot be the selfing rate here";
    faults.push(refusal("selfing-impossible", ["selfingRate"], input.selfingRate, wrong, needed));
  }
  return faults;
}

function assumedOf({ seedParentShare, sexes, selfingRate, inbreeding, seedCv }: PopulationPlanInput): Assumption[] {
  const assumed: Assumption[] = [];
  if (seedParentShare === undefined) assumed.push({ code: "all-give-seed", text: "seed is kept from every plant" });
  if (selfingRate === undefined && sexes !== "separate") {
    assumed.push({ code: "selfing-by-chance-only", text: "no more selfing than chance gives (selfing rate 0)" });
  }
  if (inbreeding === undefined) {
    assumed.push({ code: "parents-not-inbred", text: "the plants are not inbred (inbreeding 0)" });
  }
  if (seedCv === undefined)
    assumed.push({ code: "seed-shares-equal", text: "every seed parent gives the same amount of seed" });
  return assumed;
}

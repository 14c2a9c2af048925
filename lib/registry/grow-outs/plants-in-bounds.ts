import type { Stage } from "@/lib/schemas/grow-outs/field-kinds";
import { type Mating, separateSexes } from "@/lib/science/crops/mating";
import type { CountBounds } from "@/lib/science/effective-size/effective-size-span";
import type { GrowOutRecord } from "../figures/records";
import { type CountOnRecord, inOrderOfDays, type PassOnRecord, surelyBefore } from "./field-records";

/** The numbers of plants that are written of a grow-out. */
export interface Plants
  extends Pick<
    GrowOutRecord,
    "plantsStanding" | "malesStanding" | "roguedBeforePollen" | "seedParents" | "detasselled" | "seedParentsDetasselled"
  > {
  readonly roguedAfterPollen?: number | null;
}

export interface PlantsBetween {
  readonly pollenParents: CountBounds;
  readonly seedParents: CountBounds;
}

/** What was counted before plants stood. */
export interface CountedBefore {
  readonly counts: readonly Pick<CountOnRecord, "id" | "stage" | "plants" | "onFirst" | "onLast">[];
  readonly passes: readonly Pick<PassOnRecord, "id" | "timing" | "pulled" | "left" | "onFirst" | "onLast">[];
  readonly record: { readonly seedsSown: number | null };
  /** its crop is sown in clusters, so that the seeds sown bound nothing */
  readonly clusters: boolean;
}

/**
 * Between which numbers the pollen and the seed parents of a grow-out lie, by the numbers that are written of it; `mostCounted`: the most plants that
 * can have stood where nobody counted what stood, null where nothing bounds it.
 */
export function plantsInBounds(record: Plants, profile: Mating, mostCounted: number | null): PlantsBetween {
  const { plantsStanding, malesStanding, roguedBeforePollen, roguedAfterPollen, seedParents } = record;
  const before = roguedBeforePollen ?? 0;
  const stand = plantsStanding === null ? null : plantsStanding - before;
  const most = stand ?? mostCounted;
  const least = Math.max(1, seedParents ?? 1);
  if (separateSexes(profile)) {
    const males: CountBounds =
      malesStanding === null
        ? { low: 1, high: most === null ? null : Math.max(1, most - least) }
        : { low: malesStanding, high: malesStanding };
    const females = most === null ? null : Math.max(1, most - (malesStanding ?? 1) - (roguedAfterPollen ?? 0));
    return { pollenParents: males, seedParents: known(seedParents) ?? { low: 1, high: females } };
  }
  const tassels = tasselsOf(record);
  const shed = (plants: number) => Math.max(1, plants - tassels);
  const pollenParents: CountBounds =
    stand === null
      ? { low: Math.max(1, least - tassels), high: most === null ? null : Math.max(shed(most), least - tassels) }
      : { low: shed(stand), high: shed(stand) };
  const give = most === null ? null : Math.max(1, most - (roguedAfterPollen ?? 0));
  return { pollenParents, seedParents: known(seedParents) ?? { low: 1, high: give } };
}

/** Whether tassels were taken, of some seed parents perhaps. More seed parents than plants that stand cannot be, with tassels or without. */
export function seedParentsMayNotShed(record: Plants): boolean {
  const { plantsStanding, roguedBeforePollen, seedParents } = record;
  const stand = plantsStanding === null ? null : plantsStanding - (roguedBeforePollen ?? 0);
  return tasselsOf(record) > 0 && (stand === null || (seedParents ?? 0) <= stand);
}

/** Plants whose tassels were taken. */
function tasselsOf(record: Pick<Plants, "detasselled" | "seedParentsDetasselled">): number {
  return Math.max(record.detasselled ?? 0, record.seedParentsDetasselled ?? 0);
}

function known(count: number | null): CountBounds | null {
  return count === null || count < 1 ? null : { low: count, high: count };
}

const bounding: readonly Stage[] = ["lifted", "thinned", "up"];

/** The most that can have shed pollen where nobody counted what stood: the last count before, less what was pulled since. */
export function mostStanding({ record, counts, passes, clusters }: CountedBefore): number | null {
  // The stage that comes last bounds closest; of one stage the last count.
  const [last] = bounding
    .map((stage) => inOrderOfDays(counts).findLast((count) => count.stage === stage))
    .filter((count) => count !== undefined);
  const sown = inOrderOfDays(counts).findLast((count) => count.stage === "sown")?.plants ?? record.seedsSown;
  const from = last?.plants ?? (clusters ? null : sown);
  const pulled = passes
    .filter((pass) => pass.timing === "before" && !(last && surelyBefore(pass, last)))
    .reduce((sum, pass) => sum + pass.pulled, 0);
  const lefts = passes.flatMap((pass) => (pass.timing === "before" && pass.left !== null ? [pass.left] : []));
  const bounds = [...(from === null ? [] : [from - pulled]), ...lefts];
  return bounds.length === 0 ? null : Math.max(0, Math.min(...bounds));
}

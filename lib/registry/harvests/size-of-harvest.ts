import type { Mating } from "@/lib/science/crops/mating";
import { effectiveSize } from "@/lib/science/effective-size/effective-size";
import type { PlotParents, Shares } from "@/lib/science/effective-size/plot-parents";
import type { Assumption } from "@/lib/science/outcome";
import { plotParentsOfRecord } from "../figures/plot-parents-of-record";

/** The plants of a grow-out that shed pollen, as far as they were counted, and how they mate. */
export interface PlotOfHarvest {
  readonly plantsStanding: number | null;
  readonly malesStanding: number | null;
  readonly roguedBeforePollen: number | null;
  readonly detasselled: number | null;
  readonly selfingRate: number | null;
  readonly mating: Mating;
  /** mean inbreeding of the lots that were sown; null: not known */
  readonly inbreeding: number | null;
}

/** Seed parents and their shares, of one harvest or of several together. */
export interface SeedSide {
  readonly seedParents: number;
  readonly shares: Shares;
  /** how many of them had their tassels taken; null: nobody said */
  readonly detasselled: number | null;
}

export interface SizeOfHarvest {
  /** Ne, plants; null where no two genes can come from one plant */
  readonly effectiveSize: number | null;
  readonly parents: PlotParents;
  readonly assumed: readonly Assumption[];
}

/**
 * The effective size of the seed of some seed parents of a grow-out. Null where the plants that shed pollen were not counted, or the
 * counts cannot be. Formula and source: effectiveSize, over plotParentsOfRecord.
 */
export function sizeOfHarvest({ mating, inbreeding, ...plot }: PlotOfHarvest, seed: SeedSide): SizeOfHarvest | null {
  const { parents, assumed } = plotParentsOfRecord(
    {
      ...{ id: "", name: "", varietyId: "", parents: [], foreignPollen: null },
      ...plot,
      seedParents: seed.seedParents,
      seedShares: seed.shares,
      seedParentsDetasselled: seed.detasselled,
    },
    mating,
  );
  if (!parents) return null;
  const size = effectiveSize({ ...parents, ...(inbreeding === null ? {} : { inbreeding }) });
  if (!size.ok) return null;
  const told = new Set(assumed.map(({ code }) => code));
  const further = size.value.assumed.filter(({ code }) => !told.has(code));
  return { effectiveSize: size.value.effectiveSize, parents, assumed: [...assumed, ...further] };
}

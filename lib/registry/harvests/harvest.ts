/** A seed parent of a harvest: a plant on record, or a bag of nobody knows which plant. */
export interface SeedParent {
  readonly plantId: string | null;
  /** what it gave */
  readonly grams: number | null;
  readonly seeds: number | null;
  /** its share of the lot, 0..1; null not known */
  readonly share: number | null;
  /** why its seed is not in the lot; null: it is */
  readonly lost: string | null;
}

/** A harvest as far as its seed parents and their shares go. */
export interface HarvestOfGrowOut {
  readonly id: string;
  readonly bulked: string | null;
  /** plants whose seed is in it; null: nobody counted */
  readonly seedParents: number | null;
  /** how many of them had their tassels taken */
  readonly detasselled: number | null;
  /** seed in all */
  readonly grams: number | null;
  readonly seeds: number | null;
  /** one a plant where it was said which they were or what each gave; also the lost ones */
  readonly parents: readonly SeedParent[];
}

/** Those whose seed is in the lot. */
export function keptParents<P extends Pick<SeedParent, "lost">>(parents: readonly P[]): P[] {
  return parents.filter(({ lost }) => lost === null);
}

/** Whether the seed parents are known plant by plant. */
export function byPlant(harvest: HarvestOfGrowOut): boolean {
  const kept = keptParents(harvest.parents);
  return kept.length > 0 && kept.length === harvest.seedParents && kept.every(({ plantId }) => plantId !== null);
}

export interface ScoredPlant {
  readonly id: string;
  /** the block of the field that it is compared within */
  readonly cell?: string;
  /** by trait; null or left out: not scored */
  readonly scores: Readonly<Record<string, number | null>>;
}

export interface WeightedTrait {
  readonly key: string;
  readonly weight: number;
  readonly better: "higher" | "lower" | { readonly target: number };
}

/** A score, null where there is none. */
export function scoreOf({ scores }: ScoredPlant, key: string): number | null {
  return Object.hasOwn(scores, key) ? (scores[key] ?? null) : null;
}

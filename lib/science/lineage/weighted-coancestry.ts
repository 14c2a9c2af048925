/** Θ, Θ_t and the excess of Θ_k over n·n, weighted over two draws of genes: w'Θw. */
export interface WeightedCoancestry {
  readonly coancestry: number;
  readonly nativeIdentical: number;
  readonly bothNativeExcess: number;
}

/** Something that knows Θ among the parents of a lot once all older lots are settled. */
export interface CoancestryAmongParents {
  /** w'Θw over the parents of the lot of this rank */
  amongParents(rank: number): WeightedCoancestry;
  /** to be told when the figures of the lot of this rank stand */
  settled(rank: number): void;
}

/** What is known of each lot, by rank. */
export interface LineageFigures {
  /** F */
  readonly inbreeding: Float64Array;
  /** θ */
  readonly coancestry: Float64Array;
  /** n: share of the genes that come from the founders */
  readonly native: Float64Array;
  readonly generations: Float64Array;
  /** t: both genes native and identical, in two distinct seeds */
  readonly nativeIdentical: Float64Array;
  /** Fₙ: the same inside one seed */
  readonly nativeInbreeding: Float64Array;
  /** k − n²: how much oftener than by chance both genes are native, in two distinct seeds */
  readonly bothNativeExcess: Float64Array;
  /** k_F: both genes native, inside one seed */
  readonly bothNativeInside: Float64Array;
  /** a: share of the lot's genes that came from its parent lots; the rest is foreign pollen */
  readonly passing: Float64Array;
  /** three a lot: the parts of θ, t and k − n² that arose in this lot and not in its ancestors */
  readonly arisen: Float64Array;
}

export function emptyFigures(lots: number): LineageFigures {
  const column = () => new Float64Array(lots);
  return {
    inbreeding: column(),
    coancestry: column(),
    native: column(),
    generations: column(),
    nativeIdentical: column(),
    nativeInbreeding: column(),
    bothNativeExcess: column(),
    bothNativeInside: column(),
    passing: column(),
    arisen: new Float64Array(3 * lots),
  };
}

/** Means over a lot's parents, each by its share. */
export interface MeansOfParents {
  inbreeding: number;
  native: number;
  generations: number;
  nativeInbreeding: number;
  bothNativeInside: number;
}

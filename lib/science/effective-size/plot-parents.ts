/**
 * The plants that took part in one grow-out: who shed pollen, who gave seed, and in which shares.
 * Shared by the effective size of one grow-out and by the lineage of lots.
 */
export type Sexes = "hermaphrodite" | "separate";

/**
 * How unlike the parents were. `"equal"`; or a coefficient of variation, where only that is known; or one number a plant
 * (any unit: grams, seeds, shares), the seed parents first. Zero is allowed: a plant whose tassel was taken.
 */
export type Shares = "equal" | { readonly cv: number } | readonly number[];

export interface PlotParents {
  /** plants that shed pollen (all that flowered, less those rogued before shedding); separate sexes: males */
  readonly pollenParents: number;
  /** plants whose seed was kept; among the pollen parents, or females where the sexes are separate */
  readonly seedParents: number;
  /** default hermaphrodite */
  readonly sexes?: Sexes;
  /** s: share of seed from self-fertilisation beyond chance selfing; default 0 */
  readonly selfingRate?: number;
  /** no plant can father its own seed; default false */
  readonly selfIncompatible?: boolean;
  /** q; default equal */
  readonly seedShares?: Shares;
  /** p; default equal */
  readonly pollenShares?: Shares;
}

export function isCv(shares: Shares | undefined): shares is { readonly cv: number } {
  return typeof shares === "object" && !Array.isArray(shares);
}

/** Shares one by one, or undefined where only their spread or nothing is known. */
export function listed(shares: Shares | undefined): readonly number[] | undefined {
  return Array.isArray(shares) ? shares : undefined;
}

/** The coefficient of variation where the shares are not listed: `{cv: 0}` and left out are "equal". */
export function cvOf(shares: Shares | undefined): number {
  return isCv(shares) ? shares.cv : 0;
}

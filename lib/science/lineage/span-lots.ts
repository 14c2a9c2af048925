import type { CountBounds, SharesKnown } from "@/lib/science/effective-size/effective-size-span";
import type { Sexes, Shares } from "@/lib/science/effective-size/plot-parents";
import type { BlendLot, FounderLot, SownShare, SplitLot } from "@/lib/science/lineage/lots";
import type { Assumption } from "@/lib/science/outcome";

/** The least and the greatest that the records allow. */
export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** Effective sizes, plants; high null: nothing bounds it. */
export interface SizeEnds {
  readonly low: number;
  readonly high: number | null;
}

/** A part of a lot's making; share left out where nobody wrote it down (then of all its parents). */
export interface ParentShareKnown {
  readonly id: string;
  readonly share?: number;
  /** in a cross: what its plants were */
  readonly role?: SownShare["role"];
}

/** A number of plants: counted, or between bounds; left out where nothing is known of it. */
export type PlantsKnown = number | CountBounds;

/** A lot harvested from a grow-out, of which not all need have been written down. */
export interface GrowOutAsKnown {
  readonly id: string;
  readonly kind: "grow-out";
  readonly parents: readonly ParentShareKnown[];
  /** plants that shed pollen; separate sexes: males */
  readonly pollenParents?: PlantsKnown;
  /** plants whose seed was kept */
  readonly seedParents?: PlantsKnown;
  /** default hermaphrodite */
  readonly sexes?: Sexes;
  /** s: one rate, or between which two it lies; default 0 */
  readonly selfingRate?: number | Ends;
  /** default false */
  readonly selfIncompatible?: boolean;
  /** default "unknown": then one plant may have given nearly all of it */
  readonly seedShares?: SharesKnown;
  /** default equal; can be told only where both numbers of plants are known */
  readonly pollenShares?: Shares;
  /** some plants shed no pollen and nobody wrote which: all, some or none of the seed parents shed it; default false */
  readonly seedParentsMayNotShed?: boolean;
  /** m: the part of the outcross pollen that came from outside; default 0, which is then named as not assessed */
  readonly foreignPollen?: number;
  /** names the plants, where another lot was harvested from the same ones: both counted throughout, with their seed shares plant by plant */
  readonly plants?: string;
}

/** A blend whose parts may not all be known. */
export type BlendAsKnown = Omit<BlendLot, "parents"> & { readonly parents: readonly ParentShareKnown[] };

export type LotAsKnown = FounderLot | GrowOutAsKnown | BlendAsKnown | SplitLot;

/** How two founder lots are related, as far as anybody knows. */
export interface FounderPair {
  readonly a: string;
  readonly b: string;
  /** Θ(a, b), or "unknown": from unrelated to as near as the one that is less near to itself is to itself */
  readonly coancestry: number | "unknown";
}

export interface LineageSpanInput {
  /** in any order */
  readonly lots: readonly LotAsKnown[];
  /** founders that are named in no pair are unrelated */
  readonly founderPairs?: readonly FounderPair[];
}

/** What the records allow of one lot. */
export interface LotSpan {
  readonly id: string;
  /** F */
  readonly inbreeding: Ends;
  /** θ */
  readonly coancestry: Ends;
  /** 1 − θ */
  readonly diversityRetained: Ends;
  /** 1/(2θ); null at θ = 0: not limited by these records */
  readonly founderEquivalents: { readonly low: number | null; readonly high: number | null };
  /** Ne of a grow-out, plants; null for any other lot, and where nothing bounds its plants */
  readonly effectiveSize: SizeEnds | null;
  readonly generations: Ends;
  /** lots of this lineage that were taken as new founders, because nothing bounds their plants: the measure begins with them */
  readonly since: readonly string[];
}

export interface LineageSpan {
  readonly lots: readonly LotSpan[];
  readonly assumed: readonly Assumption[];
}

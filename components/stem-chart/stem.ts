/** A figure's low and high end; a point is low = high. */
export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** A moment as a year with its part (2004.8 is October 2004): first and last that it can have been. */
export interface Moment {
  readonly first: number;
  readonly last: number;
}

/** Effective sizes; high null: nothing bounds it. */
export interface SizeEnds {
  readonly low: number;
  readonly high: number | null;
}

export type StemKind = "founder" | "harvest" | "blend" | "split" | "failed" | "growing";

/** A part of what a lot was made of; share 0..1 of the plants or of the living seeds, null where nobody wrote it. */
export interface StemParent {
  readonly id: string;
  readonly share: number | null;
  /** in a cross: whether it gave the seed parents or the pollen parents */
  readonly role?: "seed parent" | "pollen parent";
}

/** A lot as the stem chart needs it; or a grow-out that gave no seed, which is drawn as a stub; or one in the field, an open stem. */
export interface StemLot {
  readonly id: string;
  /** the lot number; of a grow-out without seed its name */
  readonly number: string;
  readonly kind: StemKind;
  /** the harvest; of a split or blend the day it was parted or mixed; null: nobody knows when */
  readonly at: Moment | null;
  /** the key of the band in which it stands: who holds it */
  readonly band: string;
  readonly parents: readonly StemParent[];
  /** effective size of the grow-out that made it; null: not known, or none made it */
  readonly size: SizeEnds | null;
  /** diversity retained, 0..1; null: not known */
  readonly kept: Ends | null;
  /** foreign pollen of the grow-out that made it, with its rate 0..1 (null: suspected, no rate) and how it was found */
  readonly foreign: { readonly rate: number | null; readonly how: string | null } | null;
  /** whether there is seed in the jar; null: nobody knows */
  readonly living: boolean | null;
  /** the name of its variety where it is another one (a cross) */
  readonly variety: string | null;
}

export type ClaimKind = "descends from" | "same as" | "unknown before";

/** What somebody says of where a lot is from; drawn in dots, never counted. */
export interface StemClaim {
  readonly id: string;
  readonly lotId: string;
  readonly kind: ClaimKind;
  readonly parentId: string | null;
  readonly standing: "open" | "believed" | "set aside";
}

/** A steward's band across the years. */
export interface StemBand {
  readonly key: string;
  readonly name: string;
  readonly place: string | null;
}

/** All that is drawn of one variety. */
export interface StemTree {
  readonly lots: readonly StemLot[];
  readonly claims: readonly StemClaim[];
  readonly bands: readonly StemBand[];
}

import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import type { Assumption } from "@/lib/science/outcome";

/** A part of a lot's making: which lot, and its share of the plants grown (blend: of the living seeds). */
export interface ParentShare {
  readonly id: string;
  readonly share: number;
}

/** A parent lot of a grow-out; with a role in a cross, whose seed parents and pollen parents are of two lots. */
export interface SownShare extends ParentShare {
  /** what its plants were; left out: seed parents and pollen parents alike */
  readonly role?: "seed parent" | "pollen parent";
}

/** A lot whose parents are not on record. Founders are unrelated to each other. */
export interface FounderLot {
  readonly id: string;
  readonly kind: "founder";
  /** F, 0 to 1; default 0 */
  readonly inbreeding?: number;
  /** θ of two distinct seeds, at most ½(1 + F); default 0 */
  readonly coancestry?: number;
}

/** A lot harvested from a grow-out. */
export interface GrowOutLot extends PlotParents {
  readonly id: string;
  readonly kind: "grow-out";
  /** of a cross one of each role, half each */
  readonly parents: readonly SownShare[];
  /** m: the part of the outcross pollen that came from outside, unrelated and not inbred; 0 to 1, default 0 */
  readonly foreignPollen?: number;
  /** names the plants, where another lot was harvested from the same ones; each has its own seed shares then */
  readonly plants?: string;
}

/** Seed of lots physically mixed. */
export interface BlendLot {
  readonly id: string;
  readonly kind: "blend";
  readonly parents: readonly ParentShare[];
}

/** The same pool in another hand. */
export interface SplitLot {
  readonly id: string;
  readonly kind: "split";
  readonly parents: readonly ParentShare[];
}

export type LineageLot = FounderLot | GrowOutLot | BlendLot | SplitLot;

export interface LineageInput {
  /** in any order */
  readonly lots: readonly LineageLot[];
  /** two lots each whose coancestry is asked */
  readonly pairs?: readonly (readonly [string, string])[];
}

export interface LotLineage {
  readonly id: string;
  /** F */
  readonly inbreeding: number;
  /** θ */
  readonly coancestry: number;
  /** 1 − θ */
  readonly diversityRetained: number;
  /** 1/(2θ), or null at θ = 0: not limited by these records */
  readonly founderEquivalents: number | null;
  /** 1 − n */
  readonly foreignAncestry: number;
  /** 1 − t/k, or null where nothing native is left to compare */
  readonly nativeDiversityRetained: number | null;
  readonly generations: number;
}

export interface LineageResult {
  readonly lots: readonly LotLineage[];
  readonly pairs: readonly { readonly a: string; readonly b: string; readonly coancestry: number }[];
  readonly assumed: readonly Assumption[];
}

export function parentsOf(lot: LineageLot): readonly SownShare[] {
  return lot.kind === "founder" ? [] : lot.parents;
}

/** Whether seed parents and pollen parents are of two lots. */
export function isCross(lot: GrowOutLot): boolean {
  return lot.parents.some(({ role }) => role !== undefined);
}

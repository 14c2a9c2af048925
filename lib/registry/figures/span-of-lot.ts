import type { Ends, SizeEnds } from "@/lib/science/lineage/span-lots";

/**
 * What the records allow a lot's figures to be where something in its line of descent was not written down: each figure from its least to
 * its greatest admissible value. A lot whose line is known throughout has none: its figures are points.
 */
export interface SpanOfLot {
  /** 1 − θ, 0..1; low is the worst that the records allow. Ends are equal where all since `since` is known */
  readonly diversityRetained: Ends;
  /** θ, 0..1; high is the worst */
  readonly coancestry: Ends;
  /** F, 0..1; high is the worst */
  readonly inbreeding: Ends;
  /** Ne of the grow-out that made it, plants; null for another origin or where nothing bounds it; high null: no upper bound */
  readonly effectiveSize: SizeEnds | null;
  /** grow-outs since the founders or since `since`, on average over the ways */
  readonly generations: Ends;
  /** where the measure begins anew, because nothing bounds what went before; the lines that reach further back come first */
  readonly since: readonly LineBegins[];
  /** what was taken for the span, each one sentence without its full stop; worked out when asked for */
  readonly assumed: readonly string[];
  /** the one record that would narrow the span most; null where none would; worked out when asked for */
  readonly narrows: NarrowingRecord | null;
  /** works `narrows` out in turns with what others ask of the server: a long line is tried in many ways */
  readonly narrowsAtHand: () => Promise<void>;
}

/** A grow-out of which no number of plants is known: what it gave is measured from there on, as of a new founder. */
export interface LineBegins {
  readonly growOutId: string;
  /** the grow-out's name */
  readonly name: string;
}

/** A record that is not complete, and the span of diversity retained that would be left at either end of what it can say. */
export interface NarrowingRecord {
  readonly missing: MissingInRecord;
  /** what is incomplete; a pair of founders stands under the older */
  readonly record:
    | { readonly kind: "grow-out"; readonly id: string; readonly name: string }
    | { readonly kind: "lot"; readonly id: string; readonly name: string }
    | { readonly kind: "founders"; readonly ids: readonly [string, string]; readonly names: readonly [string, string] };
  /** diversity retained, if it turns out at its worst and at its best */
  readonly atWorst: Ends;
  readonly atBest: Ends;
}

export type MissingInRecord = "pollenParents" | "seedParents" | "seedShares" | "parentShares" | "kinship";

import type { Assumption } from "@/lib/science/outcome";
import type { LineProposal, ParentLot, ProposedGermination, ProposedLot, UnknownField } from "./proposal";
import type { Amount, Count, Counted } from "./reading";

/** Every part of a lineage says which typed line it comes from, counted from 0. */
interface FromLine {
  readonly line: number;
}

export interface LineageLot extends ProposedLot, FromLine {
  /** the grow-out that a harvest comes from */
  readonly growOut: string | null;
  readonly unknown: readonly ("year" | "parents" | "shares")[];
}

export interface LineageGrowOut extends FromLine {
  readonly name: string;
  readonly year: string | null;
  readonly sown: string | null;
  readonly parents: readonly ParentLot[];
  readonly seedsSown: Count | null;
  readonly emerged: Count | null;
  readonly plantsStanding: Count | null;
  /** sums over the passes of the line; null = not said, 0 = looked and found none */
  readonly roguedBeforePollen: Count | null;
  readonly roguedAfterPollen: Count | null;
  /** pulled, before or after pollen shed is not said */
  readonly roguedUntimed: Count | null;
  readonly seedParents: Count | null;
  readonly seedParentsCounted: Counted | null;
  readonly seedShares: "equal" | "unequal" | null;
  readonly bulked: LineProposal["bulked"];
  /** never read off words */
  readonly foreignPollen: null;
  /** why no seed came; "" where no cause is told; null where seed came */
  readonly outcome: string | null;
  /** the harvest, or null */
  readonly lot: string | null;
  readonly suspicions: readonly string[];
  readonly assumed: readonly Assumption[];
  readonly unknown: readonly UnknownField[];
}

export interface LineageEntry extends FromLine {
  readonly lot: string;
  /** true where the line doesn't say which lot it was */
  readonly lotAssumed: boolean;
  /** EDTF; null where the line has no year */
  readonly on: string | null;
  readonly kind: "received" | "harvested" | "sown" | "given" | "discarded" | "weighed";
  /** null = how much is not said: it can't be booked before someone says */
  readonly amount: Amount | null;
  readonly other: string | null;
}

export interface LineageTest extends FromLine, Omit<ProposedGermination, "lot" | "isTest"> {
  readonly lot: string;
  readonly lotAssumed: boolean;
  readonly on: string | null;
  /** whether whole numbers for sprouted and sown are there */
  readonly bookable: boolean;
}

/** A year (or years) in which nothing was grown, as told. */
export interface LineageGap extends FromLine {
  readonly year: string | null;
  readonly words: string;
}

/** What a line tells beside the chain: words not understood, and what was seen without a number. */
export interface LineageRemark extends FromLine {
  readonly words: string;
}

export interface ProposedLineage {
  readonly lots: readonly LineageLot[];
  readonly growOuts: readonly LineageGrowOut[];
  readonly ledger: readonly LineageEntry[];
  readonly tests: readonly LineageTest[];
  readonly gaps: readonly LineageGap[];
  readonly remarks: readonly LineageRemark[];
}

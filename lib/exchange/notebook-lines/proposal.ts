import type { Assumption } from "@/lib/science/outcome";
import type { Amount, Certainty, Count, Counted, FactOf, IsolationMethod, TransferManner } from "./reading";

export type LineKind = "grow-out" | "received" | "test" | "given" | "gap" | "failed" | "blend" | "split" | "note";

/** A lot that a line is about to make; names are unique among the lines of one notebook. */
export interface ProposedLot {
  readonly name: string;
  readonly kind: "founder" | "harvest" | "blend" | "split";
  /** year of its harvest, EDTF; null = not known (a jar received in 1994 was harvested in or before it) */
  readonly year: string | null;
  /** EDTF of the line where it first stands */
  readonly firstSeen: string | null;
  /** the words it is made from, as typed */
  readonly words: string;
  /** whose it was, or who holds it now, as told */
  readonly person: string | null;
  /** of a blend or a split; a founder has none on record, a harvest those of its grow-out */
  readonly parents: readonly ParentLot[];
  /** no line tells of it: it stands for seed that must have been there */
  readonly assumed: boolean;
}

/** A lot that is sown, blended, split, tested, weighed or given from. */
export interface ParentLot {
  readonly lot: string;
  /** null = not known (a single parent is all of it) */
  readonly share: number | null;
  /** true where the line doesn't say which seed */
  readonly assumed: boolean;
  /** the words that name it, or null */
  readonly words: string | null;
}

export interface ProposedRogues {
  /** 0 = looked and found none; null = rogued, how many is not said */
  readonly count: Count | null;
  readonly timing: "before" | "after" | null;
  readonly looked: Count | null;
}

export interface ProposedGift {
  readonly amount: Amount | null;
  readonly to: string;
  readonly manner: TransferManner;
  readonly lot: ParentLot | null;
}

/** What was told of the seed coming up. Only a counted one can be booked as a germination test. */
export interface ProposedGermination {
  readonly words: string;
  readonly up: Count | null;
  readonly of: Count | null;
  readonly percent: Count | null;
  readonly how: "none" | "badly" | "well" | null;
  readonly days: number | null;
  readonly isTest: boolean;
  readonly lot: ParentLot | null;
}

/** What a line would become in the registry. Everything not said is null or an empty list, and stands in `unknown`. */
export interface LineProposal {
  readonly kind: LineKind;
  /** EDTF, or null */
  readonly year: string | null;
  readonly yearWords: string | null;
  readonly yearCertainty: Certainty | null;
  /** EDTF day or month of sowing */
  readonly sown: string | null;
  readonly harvestYear: string | null;
  /** lots that this line makes: assumed ones, the received one, the harvest, the blend, the split */
  readonly lots: readonly ProposedLot[];
  /** what was sown (grow-out, failed), blended or split */
  readonly from: readonly ParentLot[];
  readonly seedsSown: Count | null;
  readonly sownAmount: Amount | null;
  readonly emerged: Count | null;
  /** alive just before the first roguing */
  readonly plantsStanding: Count | null;
  readonly flagged: Count | null;
  readonly seedParents: Count | null;
  /** what the number of seed parents was counted in; ears and pods are not plants */
  readonly seedParentsCounted: Counted | null;
  /** "kept all": every plant left standing gave seed */
  readonly allKept: boolean;
  readonly rogues: readonly ProposedRogues[];
  readonly seedShares: "equal" | "unequal" | null;
  readonly bulked: FactOf<"shares">["value"]["bulked"];
  readonly harvested: readonly Amount[];
  readonly onHand: Amount | null;
  readonly discarded: readonly (Amount | null)[];
  readonly seedWeight: FactOf<"seed-weight">["value"] | null;
  /** the lot that was weighed, thrown away or counted */
  readonly stockLot: ParentLot | null;
  readonly given: readonly ProposedGift[];
  readonly received: FactOf<"received">["value"] | null;
  readonly germination: readonly ProposedGermination[];
  /** why no seed came; "" where the line gives no cause; null where seed came or nothing was grown */
  readonly failure: string | null;
  readonly losses: readonly FactOf<"lost">["value"][];
  /** words that tell of a cross or of off-types; never a share of foreign pollen */
  readonly suspicions: readonly string[];
  readonly neighbours: readonly FactOf<"neighbour">["value"][];
  readonly isolation: readonly (IsolationMethod | null)[];
  /** defaults that the proposal rests on, in sentences for the screen */
  readonly assumed: readonly Assumption[];
  /** what a grow-out, lot or entry wants to know and the line leaves open, by the name of the field */
  readonly unknown: readonly UnknownField[];
}

export type UnknownField =
  | "year"
  | "parents"
  | "seedsSown"
  | "plantsStanding"
  | "rogues"
  | "seedParents"
  | "seedShares"
  | "harvested"
  | "foreignPollen"
  | "lotYear"
  | "amount"
  | "seedsTested"
  | "shares";

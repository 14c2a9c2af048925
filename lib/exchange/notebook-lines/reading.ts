import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { LineProposal } from "./proposal";

/** How sure the reading is: said in so many words; the usual meaning; only one of several meanings. */
export type Certainty = "sure" | "likely" | "doubtful";

/** A piece of the line: characters `from` (included) to `to` (not included), and the words as they stand there. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly words: string;
}

/**
 * A number as a person says it. "40" has value, low and high 40; "about 40" the same, approximate; "30-40" no value,
 * low 30 and high 40; "over 40" low 40 alone; "a handful" words alone. What was not said is null, never a guess.
 */
export interface Count {
  readonly words: string;
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly approximate: boolean;
}

/** What seed is counted or weighed in; null where only words were given ("a jarful", "half of it"). */
export type SeedUnit = "g" | "seeds" | "ears" | "heads" | "pods" | "fruits" | "packets";

export interface Amount extends Count {
  readonly unit: SeedUnit | null;
  /** the unit as written (`oz`, `lb`, `kg`); value, low and high are in it */
  readonly givenUnit: string | null;
  /** the same in grams, for weights */
  readonly grams: { readonly value: number | null; readonly low: number | null; readonly high: number | null } | null;
}

/** Which seed is meant by "the 1991 seed", "last year's", "the old jar", "our own", "the same jar", "Osk's". */
export type LotReference = { readonly words: string } & (
  | { readonly kind: "year"; readonly year: string }
  | { readonly kind: "last-year" | "old" | "new" | "own" | "same" }
  | { readonly kind: "whose"; readonly whose: string }
);

export type Counted = "plants" | "ears" | "heads" | "pods" | "fruits";
export type IsolationMethod = "distance" | "time" | "barrier" | "cage" | "bags" | "hand pollination";
export type TransferManner = "gift" | "loan" | "return" | "exchange" | "sale" | "to a library";

/** One member for each kind, where several carry the same value. */
type OneOf<Kind, Value> = Kind extends string ? { readonly kind: Kind; readonly value: Value } : never;

/** What a piece of the line was understood as. */
export type Fact =
  /** EDTF; null for what the registry's dates cannot say ("before 1960"). `relative`: counted from an earlier line */
  | { readonly kind: "year"; readonly value: { readonly edtf: string | null; readonly relative: boolean } }
  | { readonly kind: "harvest-year"; readonly value: { readonly edtf: string } }
  | OneOf<"day" | "sown-on", { readonly month: number; readonly day: number | null }>
  | {
      readonly kind: "plants";
      readonly value: {
        readonly count: Count;
        readonly stage: "planted" | "thinned" | "standing" | "survived" | "left";
      };
    }
  | OneOf<"emerged" | "flagged" | "seeds-sown", { readonly count: Count }>
  | {
      readonly kind: "seed-parents";
      readonly value: {
        /** null where "all" was said, or only that seed was kept */
        readonly count: Count | null;
        readonly all: boolean;
        /** ears and pods are not plants: counted as seed parents only with doubt */
        readonly counted: Counted;
        /** "12 of 40": the plants they were taken from */
        readonly of: Count | null;
      };
    }
  | {
      readonly kind: "rogued";
      readonly value: {
        /** null: rogued, how many is not said */
        readonly count: Count | null;
        readonly timing: "before" | "after" | null;
        readonly looked: Count | null;
      };
    }
  | OneOf<"sown-amount" | "harvested" | "amount" | "on-hand", { readonly amount: Amount }>
  | { readonly kind: "seed-weight"; readonly value: { readonly seeds: number; readonly grams: number } }
  | {
      readonly kind: "germination";
      readonly value: {
        readonly up: Count | null;
        readonly of: Count | null;
        readonly percent: Count | null;
        readonly how: "none" | "badly" | "well" | null;
        /** `test`: counted on purpose; `came-up`: said of plants or seed coming up, which may be the bed or a test */
        readonly where: "test" | "came-up";
        readonly days: number | null;
        /** which seed was tested, where the line says so */
        readonly lot: LotReference | null;
      };
    }
  | {
      readonly kind: "given";
      readonly value: {
        readonly amount: Amount | null;
        readonly to: string;
        readonly manner: TransferManner;
        readonly lot: LotReference | null;
      };
    }
  | {
      readonly kind: "received";
      readonly value: {
        readonly amount: Amount | null;
        readonly from: string;
        readonly how: "given" | "bought" | "exchange" | "returned" | "found" | "not-said";
      };
    }
  | { readonly kind: "sown-from"; readonly value: { readonly lots: readonly LotReference[] } }
  | {
      readonly kind: "blend";
      readonly value: {
        readonly parts: readonly { readonly lot: LotReference; readonly share: number | null }[];
        /** mixed into the seed that is in hand, which the line does not name */
        readonly withOwn: boolean;
      };
    }
  | { readonly kind: "split"; readonly value: { readonly amount: Amount | null; readonly to: string } }
  | { readonly kind: "discarded"; readonly value: { readonly amount: Amount | null } }
  /** "sown late", "grown again": grown, no more is said; and a year in which it was not */
  | OneOf<"grown" | "gap", Record<string, never>>
  | { readonly kind: "failed"; readonly value: { readonly cause: string | null } }
  | { readonly kind: "lost"; readonly value: { readonly count: Count | null; readonly cause: string | null } }
  | { readonly kind: "suspected-cross"; readonly value: { readonly other: string | null } }
  | { readonly kind: "off-types"; readonly value: { readonly count: Count | null } }
  | {
      readonly kind: "neighbour";
      readonly value: { readonly what: string; readonly distanceMetres: number | null };
    }
  | { readonly kind: "isolation"; readonly value: { readonly method: IsolationMethod | null } }
  | {
      readonly kind: "shares";
      readonly value: {
        readonly shares: "equal" | "unequal" | null;
        readonly bulked: "equal seeds" | "equal weight" | "all together" | "kept apart" | null;
      };
    }
  | { readonly kind: "purpose"; readonly value: { readonly purpose: "food" } };

export type FactKind = Fact["kind"];
export type FactOf<Kind extends FactKind> = Extract<Fact, { readonly kind: Kind }>;
export type Understood = Span & { readonly certainty: Certainty } & Fact;

/** What the reading may lean on besides the words. */
export interface LineContext {
  /** the lines typed before this one, in order */
  readonly earlier: readonly LineReading[];
  /** tells the century of "94"; without it 00 to 29 are the 2000s */
  readonly today?: CivilDay;
}

/** What was read of one line. The words stay exactly as typed, whatever was understood. */
export interface LineReading {
  readonly words: string;
  readonly understood: readonly Understood[];
  readonly notUnderstood: readonly Span[];
  readonly proposal: LineProposal;
}

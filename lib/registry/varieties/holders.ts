import { compareCodePoints } from "@/lib/science/code-point-order";
import { yearsFromDayToDay } from "@/lib/science/dates/age-span";
import { addYears, type CivilDay } from "@/lib/science/dates/civil-day";
import { grouped } from "../change-set/grouped";

/** A lot as far as the question "who has seed of it?" needs it. */
export interface HeldLot {
  readonly id: string;
  readonly number: string;
  readonly holderId: string | null;
  readonly status: string | null;
  readonly gramsOnHand: number | null;
  readonly yearFirst: string | null;
  readonly yearLast: string | null;
  /** the last day on which an entry of the ledger or a test shows that somebody had it in hand */
  readonly lastInHand: CivilDay | null;
  /** buildings in which its containers stand */
  readonly buildings: readonly string[];
}

/** A holder's word about a variety. */
export interface WordOfHolder {
  readonly id: string;
  readonly stewardId: string;
  readonly lotId: string | null;
  readonly on: string;
  readonly onFirst: CivilDay;
  readonly still: string;
}

/** Why a holder does not count as confirmed. */
export type Unconfirmed =
  | "nothing heard"
  | "heard too long ago"
  | "said no"
  | "does not know"
  | "seed past its usual life"
  | "age not known";

/** Somebody who has, or had, seed of a variety. */
export interface Holder {
  /** null: lots without a holder written, kept where this registry is kept */
  readonly stewardId: string | null;
  /** lots that may still hold seed */
  readonly lots: readonly HeldLot[];
  readonly confirmed: boolean;
  readonly why: Unconfirmed | null;
  /** the last that was heard or seen */
  readonly last: { day: CivilDay; how: "word" | "seed in hand" } | null;
  /** separate buildings; a holder with none on record is one place */
  readonly places: number;
}

export interface ConfirmedRule {
  readonly today: CivilDay;
  /** for how many years a word counts */
  readonly confirmedYears: number;
  /** usual life of the crop's seed; null: not known, then age does not count */
  readonly usualLifeYears: number | null;
}

const over: ReadonlySet<string> = new Set(["finished", "dead", "discarded"]);

/** A lot that may still hold seed: not finished, dead or discarded, and not known to be empty. */
export function mayHoldSeed(lot: Pick<HeldLot, "status" | "gramsOnHand">): boolean {
  return !over.has(lot.status ?? "") && (lot.gramsOnHand === null || lot.gramsOnHand > 0);
}

/** Years since the harvest, counted from its last possible day: what is surely past. Null where the year is not known. */
export function surelyYearsOld(lot: Pick<HeldLot, "yearLast">, today: CivilDay): number | null {
  return lot.yearLast === null ? null : Math.max(0, yearsFromDayToDay(lot.yearLast, today));
}

/**
 * Who holds seed of one variety, and who of them counts as confirmed: something was heard of them, or seed was in their hand, within the
 * rule's years, and a lot of theirs is younger than the seed's usual life. The newest word outweighs what was seen earlier.
 */
export function holdersOf(lots: readonly HeldLot[], words: readonly WordOfHolder[], rule: ConfirmedRule): Holder[] {
  const lotsBy = grouped(lots, (lot) => lot.holderId);
  const wordsBy = grouped(words, (word) => word.stewardId);
  // In the order in which they were written down, in whatever order the rows came.
  const ids = [...new Set<string | null>([...lotsBy.keys(), ...wordsBy.keys()])].sort((one, other) =>
    compareCodePoints(one ?? "", other ?? ""),
  );
  return ids.flatMap((stewardId) => {
    const own = lotsBy.get(stewardId) ?? [];
    const held = own.filter(mayHoldSeed);
    const said = stewardId === null ? [] : (wordsBy.get(stewardId) ?? []);
    // Whoever gave all away and never said a word is no holder any more.
    if (held.length === 0 && said.length === 0) return [];
    return [holder(stewardId, held, said, rule)];
  });
}

function holder(
  stewardId: string | null,
  lots: HeldLot[],
  words: readonly WordOfHolder[],
  rule: ConfirmedRule,
): Holder {
  const word = words.reduce<WordOfHolder | null>(
    (newest, each) => (newest && !later(each, newest) ? newest : each),
    null,
  );
  const seen = lots.reduce<CivilDay | null>(
    (latest, lot) =>
      lot.lastInHand !== null && (latest === null || lot.lastInHand > latest) ? lot.lastInHand : latest,
    null,
  );
  const byWord = word !== null && (seen === null || word.onFirst >= seen);
  const last = byWord
    ? { day: word.onFirst, how: "word" as const }
    : seen === null
      ? null
      : { day: seen, how: "seed in hand" as const };
  const why = whyNot(lots, byWord ? word : null, last?.day ?? null, rule);
  const buildings = new Set(lots.flatMap((lot) => lot.buildings));
  return { stewardId, lots, confirmed: why === null, why, last, places: Math.max(1, buildings.size) };
}

function later(a: WordOfHolder, b: WordOfHolder): boolean {
  return a.onFirst > b.onFirst || (a.onFirst === b.onFirst && a.id > b.id);
}

function whyNot(
  lots: readonly HeldLot[],
  word: WordOfHolder | null,
  last: CivilDay | null,
  rule: ConfirmedRule,
): Unconfirmed | null {
  if (word?.still === "no") return "said no";
  if (word?.still === "unknown") return "does not know";
  if (last === null) return "nothing heard";
  if (addYears(last, rule.confirmedYears) < rule.today) return "heard too long ago";
  const { usualLifeYears, today } = rule;
  if (usualLifeYears === null) return null;
  const ages = lots.map((lot) => surelyYearsOld(lot, today));
  if (ages.some((age) => age !== null && age <= usualLifeYears)) return null;
  return ages.some((age) => age === null) || ages.length === 0 ? "age not known" : "seed past its usual life";
}

import type { SowingCount } from "@/lib/science/sowing/sowing-count";
import { gramsOf } from "../ledger/balance";
import { type SeedCount, type SeedsPerGram, seedsIn } from "../lots/live-seeds";
import { sowingFor } from "../reserve/sowing-for";

/** What one holder keeps back of one variety, as far as a sowing can eat into it. */
export interface ReserveHeld {
  readonly varietyId: string;
  readonly holderId: string | null;
  /** seeds to be kept back; null where it cannot be worked out */
  readonly seeds: number | null;
  /** seeds of the good lots together */
  readonly onHand: SeedCount;
  /** ids of the good lots: seed of others is not counted on, and is not in it */
  readonly good: readonly string[];
}

/** A lot that could be sown, with what its jar and its last test say. Null is not known. */
export interface LotToSow {
  readonly id: string;
  readonly number: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly year: string | null;
  readonly holderId: string | null;
  readonly holder: string | null;
  /** on hand by the ledger */
  readonly grams: number | null;
  readonly thousandSeedGrams: number | null;
  readonly perGram: SeedsPerGram;
  readonly test: {
    readonly testId: string;
    readonly date: string;
    readonly sown: number;
    readonly normal: number;
  } | null;
  /** what stands against sowing it, after its number: "is on hold" */
  readonly objections: readonly string[];
  /** how it is known to be the variety; null: not written */
  readonly identityGrade: string | null;
  readonly treatment: string | null;
  readonly treatmentSubstance: string | null;
  readonly reserve: ReserveHeld | null;
}

/** What is taken out of a jar to be sown. */
export interface TakenToSow {
  readonly amount: number;
  readonly unit: "g" | "seeds";
}

/** How many seeds of a lot to sow for some plants, and what they weigh by the lot's own seed weight. */
export interface ProposedSowing {
  readonly plants: number;
  /** null where the lot was never tested, or no number of seeds will do */
  readonly sowing: SowingCount | null;
  /** null where the lot's seeds were never counted and weighed */
  readonly grams: number | null;
}

export function proposedSowing(lot: Pick<LotToSow, "test" | "thousandSeedGrams">, plants: number): ProposedSowing {
  const sowing = sowingFor(lot.test, plants);
  const { thousandSeedGrams } = lot;
  return {
    plants,
    sowing,
    grams: sowing && thousandSeedGrams !== null ? (sowing.seeds * thousandSeedGrams) / 1000 : null,
  };
}

/**
 * The plants that each of several lots is to give: its share of the plants wanted, rounded up. Shares that nobody told are taken as even.
 */
export function plantsOfEach(wanted: number, shares: readonly (number | null)[]): number[] {
  const told = shares.length === 1 ? [1] : shares.every((share) => share !== null) ? (shares as number[]) : null;
  // A share of 0.1 of 30 is 3 plants, not 4: what binary fractions add is taken off before rounding up.
  return shares.map((_, index) => Math.max(1, Math.ceil(wanted * (told?.[index] ?? 1 / shares.length) - 1e-9)));
}

/** The seeds in what was taken: counted where the lot's seed weight is known, else a span by the crop's usual; null not known. */
export function seedsTaken(lot: Pick<LotToSow, "thousandSeedGrams" | "perGram">, taken: TakenToSow): SeedCount | null {
  if (taken.unit === "g") return seedsIn(taken.amount, lot.thousandSeedGrams, lot.perGram);
  return { value: taken.amount, low: taken.amount, high: taken.amount, grade: "counted" };
}

/** Whether a jar surely holds fewer seeds than a sowing asks for; false where nobody knows. */
export function moreThanInJar(lot: Pick<LotToSow, "grams" | "thousandSeedGrams" | "perGram">, seeds: number): boolean {
  const held = seedsIn(lot.grams, lot.thousandSeedGrams, lot.perGram);
  return held !== null && held.high < seeds;
}

/** Grams that stay in a lot's jar after a sowing; below 0 where more is taken than is there; null where either is not known. */
export function gramsLeft(lot: Pick<LotToSow, "grams" | "thousandSeedGrams">, taken: TakenToSow): number | null {
  const grams = gramsOf(taken, lot.thousandSeedGrams);
  return lot.grams === null || grams === null ? null : lot.grams - grams;
}

/** Whether a sowing leaves what is to be kept back. */
export type ReserveAnswer = "kept" | "touched" | "may be touched" | "cannot tell";

export interface ReserveAfter {
  readonly reserve: ReserveHeld;
  readonly answer: ReserveAnswer;
  /** seeds of the good lots after it; null where what is taken cannot be counted */
  readonly left: SeedCount | null;
  /** it was not met before either */
  readonly shortBefore: boolean;
}

/**
 * What a sowing leaves of each holder's reserve: seeds of the good lots less the seeds taken from them, end by end. "touched" only where
 * even the most seeds that may be left are fewer than the reserve; a lot that is not counted on takes nothing from it.
 */
export function reservesAfter(sown: readonly { readonly lot: LotToSow; readonly taken: TakenToSow }[]): ReserveAfter[] {
  const held = new Map<string, { reserve: ReserveHeld; taken: (SeedCount | null)[] }>();
  for (const { lot, taken } of sown) {
    const { reserve } = lot;
    if (reserve === null || taken.amount === 0) continue;
    const key = `${reserve.varietyId} ${reserve.holderId ?? ""}`;
    const group = held.get(key) ?? { reserve, taken: [] };
    held.set(key, group);
    if (reserve.good.includes(lot.id)) group.taken.push(seedsTaken(lot, taken));
  }
  return [...held.values()].map(({ reserve, taken }) => answerOf(reserve, taken));
}

function answerOf(reserve: ReserveHeld, taken: readonly (SeedCount | null)[]): ReserveAfter {
  const { onHand, seeds } = reserve;
  const shortBefore = seeds !== null && onHand.high < seeds;
  if (taken.length === 0)
    return { reserve, answer: seeds === null ? "cannot tell" : "kept", left: onHand, shortBefore };
  const left = taken.reduce<SeedCount | null>((rest, each) => (rest && each ? less(rest, each) : null), onHand);
  if (seeds === null || left === null) return { reserve, answer: "cannot tell", left, shortBefore };
  const answer = left.high < seeds ? "touched" : left.low < seeds ? "may be touched" : "kept";
  return { reserve, answer, left, shortBefore };
}

/** What is left, at its fewest where the fewest were there and the most were taken. */
function less(held: SeedCount, taken: SeedCount): SeedCount {
  return {
    value: held.value === null || taken.value === null ? null : Math.max(0, held.value - taken.value),
    low: Math.max(0, held.low - taken.high),
    high: Math.max(0, held.high - taken.low),
    grade: held.grade === "assumed" || taken.grade === "assumed" ? "assumed" : "counted",
  };
}

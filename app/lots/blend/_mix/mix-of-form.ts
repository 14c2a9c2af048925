import { gramsTyped, type UnitSettings } from "@/lib/display/units";
import type { BlendCandidate } from "@/lib/registry/lots/read-blend-ground";
import { testedTooLongAgo } from "@/lib/registry/lots/test-age";
import { seedUnits } from "@/lib/schemas/lots/blend-lots";
import { decimal } from "@/lib/schemas/lots/form-fields";
import { type AmountOfPart, amountOfPart } from "@/lib/science/blend/amount-of-part";
import type { CivilDay } from "@/lib/science/dates/civil-day";

export type Texts = Readonly<Record<string, string>>;

/** What is known, or said, of how much of a lot lives. Shares 0 to 1. */
export interface Living {
  readonly share: number;
  readonly low: number;
  readonly high: number;
  /** assumed: a person's word, or a test older than the seed's usual life */
  readonly grade: "counted" | "assumed";
}

/** A ticked lot with what its fields say. */
export interface PartOfForm {
  readonly lot: BlendCandidate;
  /** null while no amount stands there, or the lot's seed weight is not known */
  readonly amount: AmountOfPart | null;
  readonly living: Living | null;
  /** living seeds, with the ends of the test's interval */
  readonly live: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** grams that stay in its jar; null not known */
  readonly left: number | null;
}

export interface ReadingOfForm {
  readonly units: UnitSettings;
  readonly usualLifeYears: number | null;
  readonly today: CivilDay;
}

/** Whether a lot is ticked. */
export function isIn(values: Texts, lot: { readonly id: string }): boolean {
  return values[`in.${lot.id}`] === "yes";
}

/** The lots that are ticked, in the order of the list, with what their fields come to. Nothing is guessed: what is missing is null. */
export function partsOfForm(lots: readonly BlendCandidate[], values: Texts, reading: ReadingOfForm): PartOfForm[] {
  return lots.filter((lot) => isIn(values, lot)).map((lot) => partOfForm(lot, values, reading));
}

function partOfForm(lot: BlendCandidate, values: Texts, reading: ReadingOfForm): PartOfForm {
  const amount = amountTyped(lot, values, reading.units);
  const living = livingOf(lot, values, reading);
  const seeds = amount?.seeds ?? null;
  return {
    lot,
    amount,
    living,
    live:
      seeds === null || living === null
        ? null
        : { value: seeds * living.share, low: seeds * living.low, high: seeds * living.high },
    left: lot.grams === null || amount === null ? null : lot.grams - amount.grams,
  };
}

function amountTyped(lot: BlendCandidate, values: Texts, units: UnitSettings): AmountOfPart | null {
  const read = decimal({ above: 0 })(values[`amount.${lot.id}`] ?? "");
  const unit = seedUnits.find((each) => each === values[`unit.${lot.id}`]) ?? "g";
  if (!read.ok || lot.thousandSeedGrams === null) return null;
  return amountOfPart(unit === "g" ? gramsTyped(read.value, units) : read.value, unit, lot.thousandSeedGrams);
}

/** What lives of a lot by its last test, else by what a person writes. */
export function livingOf(lot: BlendCandidate, values: Texts, { usualLifeYears, today }: ReadingOfForm): Living | null {
  if (lot.test !== null) {
    const { germination, low, high } = lot.test;
    const aged = testedTooLongAgo(lot.test, usualLifeYears, today);
    return { share: germination, low, high, grade: aged ? "assumed" : "counted" };
  }
  const read = decimal({ above: 0, atMost: 100 })((values[`living.${lot.id}`] ?? "").replace(/%\s*$/, ""));
  if (!read.ok) return null;
  return { share: read.value / 100, low: read.value / 100, high: read.value / 100, grade: "assumed" };
}

/** Shares of all living seeds, in the order of the parts; null where of one nobody knows what lives, or nothing is taken yet. */
export function sharesOf(parts: readonly PartOfForm[]): number[] | null {
  const live = parts.map((part) => part.live?.value ?? null);
  if (live.includes(null)) return null;
  const all = live.reduce<number>((sum, each) => sum + (each ?? 0), 0);
  return all > 0 ? live.map((each) => (each ?? 0) / all) : null;
}

/** What all parts come to together; null where one is not known. */
export function sumOfParts(parts: readonly PartOfForm[]) {
  const amounts = parts.flatMap((part) => part.amount ?? []);
  const live = parts.flatMap((part) => part.live ?? []);
  const known = amounts.length === parts.length && parts.length > 0;
  const sum = (values: readonly number[]) => values.reduce((total, each) => total + each, 0);
  const grams = sum(amounts.map((each) => each.grams));
  const seeds = sum(amounts.map((each) => each.seeds));
  return {
    grams: known ? grams : null,
    seeds: known ? seeds : null,
    thousandSeedGrams: known && seeds > 0 ? (1000 * grams) / seeds : null,
    live:
      known && live.length === parts.length
        ? {
            value: sum(live.map((each) => each.value)),
            low: sum(live.map((each) => each.low)),
            high: sum(live.map((each) => each.high)),
            grade: parts.some((part) => part.living?.grade === "assumed") ? ("assumed" as const) : ("counted" as const),
          }
        : null,
  };
}

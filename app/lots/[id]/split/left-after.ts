import { gramsTyped, type UnitSettings } from "@/lib/display/units";
import type { SeedCount } from "@/lib/registry/lots/live-seeds";
import { decimal } from "@/lib/schemas/lots/form-fields";
import { amountOfPart } from "@/lib/science/blend/amount-of-part";

export interface JarToSplit {
  readonly id: string;
  readonly grams: number | null;
  readonly thousandSeedGrams: number | null;
  readonly holder: string | null;
}

/** The holder's reserve, and what lies on good lots against it. */
export interface KeptBack {
  readonly seeds: number;
  readonly onHand: SeedCount;
  /** good lots of which nobody knows how many seeds they are */
  readonly uncounted: number;
}

/** What a split would leave. */
export interface LeftAfter {
  /** grams that are parted; null while no amount stands there, or it has no weight */
  readonly grams: number | null;
  /** grams that stay in the jar, below 0 where too much is taken */
  readonly left: number | null;
  /** seeds of the holder's good lots afterwards; null where nothing says */
  readonly onHand: SeedCount | null;
  readonly reserveKept: "yes" | "no" | "cannot tell" | null;
}

/**
 * What stays when the typed amount is parted. The part counts no more for the reserve, whoever holds it: a new jar is not counted on before
 * it is tested. Only a jar that was counted on takes from the reserve.
 */
export function leftAfter(
  { grams: held, thousandSeedGrams }: JarToSplit,
  counted: boolean,
  kept: KeptBack | null,
  values: Readonly<Record<string, string>>,
  units: UnitSettings,
): LeftAfter {
  const read = decimal({ above: 0 })(values.amount ?? "");
  const nothing = { grams: null, left: null, onHand: null, reserveKept: null };
  if (!read.ok) return nothing;
  const inSeeds = values.unit === "seeds";
  if (inSeeds && thousandSeedGrams === null) return nothing;
  const typed = inSeeds ? read.value : gramsTyped(read.value, units);
  const amount = thousandSeedGrams === null ? null : amountOfPart(typed, inSeeds ? "seeds" : "g", thousandSeedGrams);
  const grams = amount?.grams ?? typed;
  const left = held === null ? null : held - grams;
  if (kept === null || left === null || left < 0) return { ...nothing, grams, left };
  const taken = counted ? (amount?.seeds ?? null) : 0;
  if (taken === null) return { grams, left, onHand: null, reserveKept: "cannot tell" };
  const less = (seeds: number) => Math.max(0, seeds - taken);
  const { value, low, high, grade } = kept.onHand;
  const onHand = { value: value === null ? null : less(value), low: less(low), high: less(high), grade };
  const reserveKept =
    onHand.low >= kept.seeds ? "yes" : onHand.high < kept.seeds && kept.uncounted === 0 ? "no" : "cannot tell";
  return { grams, left, onHand, reserveKept };
}

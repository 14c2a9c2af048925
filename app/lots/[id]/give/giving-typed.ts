import { gramsTyped, type UnitSettings } from "@/lib/display/units";
import { type SeedsPerGram, seedsIn } from "@/lib/registry/lots/live-seeds";
import { gramsOfAmount } from "@/lib/registry/transfers/after-giving";
import type { AboutToGive } from "@/lib/registry/transfers/giving-rules";
import type { StewardToGiveTo } from "@/lib/registry/transfers/read-giving";
import { readDecimal } from "@/lib/schemas/notebook/decimal";
import { givingKinds } from "@/lib/schemas/transfers/transfer";

type Texts = Readonly<Record<string, string>>;

/** What is typed in the form so far, as the rules of giving take it. */
export interface GivingTyped extends AboutToGive {
  /** who gets it, in words; empty: not said yet */
  readonly to: string;
  /** the amount as typed, with its unit; empty: not said yet */
  readonly amountWords: string;
}

/** Reads what is typed: an amount that is not whole yet gives null, and nobody is somebody outside. */
export function givingTyped(
  values: Texts,
  known: {
    readonly holder: string | null;
    readonly stewards: readonly StewardToGiveTo[];
    readonly units: UnitSettings;
    readonly thousandSeedGrams: number | null;
    readonly seedsPerGram: SeedsPerGram;
  },
): GivingTyped {
  const kind = givingKinds.find((each) => each === values.kind) ?? "gift";
  const steward = known.stewards.find((each) => each.name === values.holder);
  const inSeeds = values.unit === "seeds";
  const typed = readDecimal(values.amount ?? "", ",");
  const amount = typed.ok && typed.value > 0 ? typed.value : null;
  const unit = inSeeds ? ("seeds" as const) : ("g" as const);
  const base = amount === null || inSeeds ? amount : gramsTyped(amount, known.units);
  const grams = base === null ? null : gramsOfAmount(base, unit, known.thousandSeedGrams);
  const to = steward?.name ?? (values.newHolder || values.toWords || "").trim();
  return {
    kind,
    staysWithHolder: steward !== undefined && known.holder !== null && steward.name === known.holder,
    toLibrary: kind === "to a library" || steward?.kind === "library",
    outside: steward === undefined && !values.newHolder?.trim(),
    grams,
    seeds: seedsIn(grams, known.thousandSeedGrams, known.seedsPerGram),
    to,
    amountWords: amount === null ? "" : `${values.amount?.trim()} ${inSeeds ? "seeds" : known.units.weight}`,
  };
}

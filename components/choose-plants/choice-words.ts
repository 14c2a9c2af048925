import { effectiveSizeSpan, percent, percentSpan, wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { ChoiceGround } from "@/lib/schemas/plants/choice-ground";
import type { EffectiveSizeSpan } from "@/lib/science/effective-size/effective-size-span";

/** How the number kept stands to what the variety wants; null where nobody said. */
export function againstWanted(kept: number, { wanted }: ChoiceGround): { waits: boolean; words: string } | null {
  if (wanted === null) return null;
  const who = wanted.from === "plan" ? "The plan" : "The variety";
  const asks = `${who} asks for ${counted(wanted.count, "seed parent")}`;
  if (kept >= wanted.count) return { waits: false, words: `${asks}: met.` };
  return { waits: true, words: `${asks}: ${wholeNumber(wanted.count - kept)} are missing.` };
}

/** How the effective size stands to the crop's floor; null where it has none, or no size is known. */
export function againstFloor(
  size: Pick<EffectiveSizeSpan, "low" | "high"> | null,
  floor: number | null,
): { waits: boolean; words: string } | null {
  if (size === null || floor === null) return null;
  const said = `The crop’s floor is ${wholeNumber(floor)} plants`;
  if (size.high !== null && size.high < floor)
    return { waits: true, words: `${said}: this year would be a bottleneck.` };
  if (size.low < floor) return { waits: true, words: `${said}, which lies within.` };
  return { waits: false, words: `${said}: not gone below.` };
}

/** The share of the diversity that a year of this size costs: "0.8 %", or a span. */
export function costInWords({ low, high }: Pick<EffectiveSizeSpan, "low" | "high">): string {
  const most = 1 / (2 * low);
  const least = high === null ? 0 : 1 / (2 * high);
  if (high === null) return `at most ${percent(most)}`;
  return percent(least) === percent(most) ? percent(most) : percentSpan(least, most);
}

export function sizeInWords({ low, high }: Pick<EffectiveSizeSpan, "low" | "high">): string {
  return effectiveSizeSpan(low, high);
}

/** How much seed of each for so many in all: whole seeds, rounded up. */
export function seedsOfEach(seeds: number, kept: number): number {
  return Math.ceil(seeds / Math.max(1, kept));
}

/** The standing of a mean among neighbours, in standard deviations: "+1.24". */
export function standsAt(index: number): string {
  const size = Math.abs(index).toFixed(2);
  return size === "0.00" ? "0.00" : `${index < 0 ? "−" : "+"}${size}`;
}

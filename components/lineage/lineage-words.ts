import { effectiveSizeSpan, percent } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import type { LineageLot } from "./lots";

const origins = {
  founder: "parents not on record",
  harvest: "harvested from",
  blend: "blended from",
  split: "split from",
} as const;

/** The years of a lot: "1994", "1987 to 1991", "year unknown". */
export function yearsInWords(lot: LineageLot): string {
  if (!lot.years) return "year unknown";
  return lot.years.first === lot.years.last ? String(lot.years.first) : `${lot.years.first} to ${lot.years.last}`;
}

/** One lot of the lineage as a sentence, for the drawing's text twin. */
export function lotInWords(lot: LineageLot, names: ReadonlyMap<string, string>): string {
  const parents = lot.parents.map((parent) => {
    const name = names.get(parent.id) ?? "a lot not shown";
    return lot.parents.length === 1 || parent.share === null ? name : `${name} (${percent(parent.share)})`;
  });
  const none = lot.parentsLeftOut ? "its own parents are not drawn here" : origins.founder;
  const origin = parents.length === 0 ? none : `${origins[lot.kind]} ${listed(parents)}`;
  const size =
    lot.kind === "harvest"
      ? `; effective size ${effectiveSizeSpan(lot.effectiveSize?.low ?? null, lot.effectiveSize?.high ?? null)}`
      : "";
  return `${lot.name}, ${yearsInWords(lot)}: ${origin}${size}${lot.told ? "; only told" : ""}.`;
}

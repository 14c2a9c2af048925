import { dateInWords } from "@/lib/display/dates";
import type { LotOfLineage } from "@/lib/registry/lineage/lineage-lots";

/** When a lot was made, as it is on record; with the words in which it was told. */
export function whenInWords({ on, onWords, at }: LotOfLineage): string {
  const told = onWords ? `“${onWords}”` : "";
  if (on !== null) return told === "" ? dateInWords(on) : `${dateInWords(on)}, ${told}`;
  if (told !== "") return told;
  return at === null ? "year unknown" : `about ${Math.floor(at.last)}`;
}

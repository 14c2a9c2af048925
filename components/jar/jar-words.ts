import { grams, seedsAbout, seedsCounted, span, unknown } from "@/lib/display/numbers";
import type { Amount, JarContents } from "./jar-levels";

/** An amount of seeds in words: "about 1,240 seeds", "980–1,150 seeds", "unknown". */
export function amountInWords(amount: Amount | null): string {
  if (amount === null) return unknown;
  const { value, low = null, high = null, grade } = amount;
  if (value === 0) return "none";
  if (low !== null && high !== null && low !== high) return span(Math.max(0, low), high, "seeds");
  if (value === null) return span(low, high, "seeds");
  return grade === "counted" ? seedsCounted(Math.round(value)) : seedsAbout(value);
}

/** The jar as sentences: what the drawing's text twin says. */
export function jarInWords(contents: JarContents, until?: string | null): string {
  const assumed = (amount: Amount | null) => (amount?.grade === "assumed" ? " (assumed)" : "");
  const weight = contents.grams === null ? "" : `${grams(contents.grams)}, `;
  const parts = [
    `On hand ${weight}${amountInWords(contents.seeds)}${assumed(contents.seeds)}`,
    `alive ${amountInWords(contents.alive)}${assumed(contents.alive)}`,
    `kept back ${contents.reserved === null ? unknown : seedsAbout(contents.reserved)}`,
    `free ${amountInWords(contents.free)}`,
    until === undefined ? [] : until === null ? "how long it keeps is unknown" : `good until ${until}`,
  ].flat();
  return `${parts.join("; ")}.`.replaceAll("\u00a0", " ");
}

import { effectiveSizeSpan, percent, percentSpan } from "@/lib/display/numbers";
import type { LotFigures } from "@/lib/registry/figures/read-figures";
import { type OwnKept, ownKept } from "@/lib/registry/varieties/own-kept";
import type { LotOfVariety } from "@/lib/registry/varieties/read-variety";
import { keptWords } from "../../../_words/kept-words";

/** "94 %", "78–94 %", "uniform", "unknown": the variety's own diversity that a lot keeps. */
export function ownKeptInWords(lot: LotOfVariety): string {
  const kept = ownKept(lot.figures, lot.standing);
  if (kept.value !== null) return percent(kept.value);
  if (kept.low !== null && kept.high !== null) return percentSpan(kept.low, kept.high);
  return keptWords(lot.standing === "counted" ? "plants not known" : lot.standing, null);
}

/** How a lot's figure is known: assumed wherever a default moved it. */
export function gradeOf(lot: LotOfVariety, kept: OwnKept = ownKept(lot.figures, lot.standing)) {
  if (kept.value === null) return kept.low === null ? "unknown" : "assumed";
  return (lot.figures?.assumed.length ?? 0) > 0 ? "assumed" : "counted";
}

/** A size as a point or a span; "unknown" where nothing is known of it. */
export function sizeInWords(size: { readonly low: number; readonly high: number | null } | null): string {
  return size === null ? "unknown" : effectiveSizeSpan(size.low, size.high);
}

/** A figure of a lot, or its span where its line is not known throughout. */
export function pointOrSpan(
  figures: LotFigures | null,
  of: "inbreeding" | "coancestry" | "diversityRetained",
): { readonly low: number; readonly high: number } | null {
  const value = figures?.[of] ?? null;
  const span = figures?.span?.[of] ?? null;
  if (span !== null || value === null) return span;
  return { low: value, high: value };
}

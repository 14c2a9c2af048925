import type { SpanOfLot } from "../figures/span-of-lot";
import type { LineageStanding } from "./lineage-standing";

/** The span that stands in the place of a lot's figure; null where a figure stands, or where neither says anything (a uniform line, lines not known). */
export function spanShown(
  standing: LineageStanding,
  figures: { readonly span: SpanOfLot | null } | null | undefined,
): SpanOfLot | null {
  if (standing !== "counted" && standing !== "plants not known") return null;
  return figures?.span ?? null;
}

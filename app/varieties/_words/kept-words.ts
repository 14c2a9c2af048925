import { percent } from "@/lib/display/numbers";
import type { LineageStanding } from "@/lib/registry/varieties/lineage-standing";

/** Diversity retained in a few words; a percentage only where it says something. */
export function keptWords(standing: LineageStanding, diversityRetained: number | null): string {
  if (standing === "clonal") return "kept by division";
  if (standing === "uniform") return "uniform";
  if (standing === "counted") return percent(diversityRetained, 0);
  return "unknown";
}

/** Why there is no percentage, and what would make it known; null where there is one. */
export function whyNotKept(standing: LineageStanding): string | null {
  if (standing === "clonal") {
    return "It is kept by division: each plant is the same plant again, so there is no lineage of seed and nothing is lost or mixed by it.";
  }
  if (standing === "uniform")
    return "One line of a selfing crop: all its plants are alike, so there is nothing to lose but the line itself.";
  if (standing === "lines not known") {
    return "It is a selfing crop, and nobody wrote whether its founder lot was one line or many. One line is uniform; of many lines a percentage can be told. Write it on the founder lot.";
  }
  if (standing === "plants not known") {
    return "Somewhere in its lineage the plants that stood, the seed parents or their shares were not written down. Write them on that grow-out and the figure is known.";
  }
  return null;
}

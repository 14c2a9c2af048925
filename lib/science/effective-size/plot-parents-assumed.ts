import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import type { Assumption } from "@/lib/science/outcome";

/** The defaults about one grow-out's parents that move its figures: none is named where it could not matter. */
export function plotParentsAssumed(plot: PlotParents): Assumption[] {
  const separate = plot.sexes === "separate";
  const assumed: Assumption[] = [];
  if (plot.seedShares === undefined && plot.seedParents > 1) {
    assumed.push({ code: "seed-shares-equal", text: "every seed parent gave the same amount of seed" });
  }
  if (plot.pollenShares === undefined && plot.pollenParents > 1 && plot.selfingRate !== 1) {
    assumed.push({ code: "pollen-shares-equal", text: "every pollen parent fathered the same amount of seed" });
  }
  if (plot.selfingRate === undefined && !separate && plot.selfIncompatible !== true) {
    assumed.push({ code: "selfing-by-chance-only", text: "no more selfing than chance gives (selfing rate 0)" });
  }
  return assumed;
}

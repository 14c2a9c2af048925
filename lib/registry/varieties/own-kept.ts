import type { LotFigures } from "../figures/read-figures";
import type { LineageStanding } from "./lineage-standing";

/** How much of the variety's own diversity a lot holds: a point, a span, or nothing that can be said. Shares 0 to 1. */
export interface OwnKept {
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** some of its genes came by foreign pollen: what is told is of the native ones */
  readonly foreign: boolean;
}

type Figures = Pick<LotFigures, "nativeDiversityRetained" | "foreignAncestry" | "span">;

/**
 * What a lot keeps of the variety's own diversity. Foreign pollen makes 1 − θ rise while the native genes erode, so that the native figure
 * stands wherever a lot is compared with another. A line that is not known throughout, or whose founders may be kin, gives the span of what its
 * records allow, never a point; that span takes foreign genes as they come, and is not told where there are any.
 */
export function ownKept(figures: Figures | null, standing: LineageStanding): OwnKept {
  const foreign = (figures?.foreignAncestry ?? 0) > 1e-9;
  const nothing = { value: null, low: null, high: null, foreign };
  if (figures === null || standing === "clonal" || standing === "uniform" || standing === "lines not known")
    return nothing;
  if (standing === "counted" && (figures.span === null || foreign))
    return { ...nothing, value: figures.nativeDiversityRetained };
  if (figures.span === null || foreign) return nothing;
  const { low, high } = figures.span.diversityRetained;
  return { ...nothing, low, high };
}

import type { SectionOfGrowOut } from "./section-of-grow-out";

/** Other plantings and wild stands that could send pollen, and what was done against them. */
export function NeighboursOfGrowOut(_section: SectionOfGrowOut) {
  return null;
}

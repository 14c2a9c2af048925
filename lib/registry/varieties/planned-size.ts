import { plantsWanted } from "../reserve/plants-wanted";

/** How many plants a grow-out was to have, and who says so. */
export interface PlannedSize {
  /** plants that shed pollen; separate sexes: males */
  readonly pollenParents: number;
  readonly seedParents: number;
  /** plants in all */
  readonly plants: number;
  readonly from: "plan" | "variety" | "crop";
}

/** What is written of the size that a grow-out was meant to have. */
export interface SizeAskedFor {
  readonly plantsPlanned: number | null;
  readonly seedParentsPlanned: number | null;
  readonly plantsWanted: number | null;
  readonly seedParentsWanted: number | null;
  readonly cropFewest: number | null;
}

/**
 * The size that a grow-out was planned at: its own plan; where it has none, what the variety asks for; else the fewest plants of the crop. Seed
 * is kept of all plants unless the same place says otherwise. Where the sexes are separate half of the plants, rounded down, are males. Null
 * where nobody says, and for a plan of a single plant.
 */
export function plannedSize(asked: SizeAskedFor, separateSexes: boolean): PlannedSize | null {
  const own = asked.plantsPlanned;
  const wanted =
    own !== null ? { plants: own, from: "plan" as const } : plantsWanted(asked.plantsWanted, asked.cropFewest);
  if (wanted === null || wanted.plants < 2) return null;
  const { plants, from } = wanted;
  const told = from === "plan" ? asked.seedParentsPlanned : from === "variety" ? asked.seedParentsWanted : null;
  const males = separateSexes ? Math.floor(plants / 2) : plants;
  const mostSeedParents = separateSexes ? plants - males : plants;
  return {
    plants,
    from,
    pollenParents: males,
    seedParents: Math.max(1, Math.min(told ?? mostSeedParents, mostSeedParents)),
  };
}

import { type Refusal, refusal } from "@/lib/science/outcome";

/** Seed parents are among the plants. */
export function planFaults({
  plantsPlanned,
  seedParentsPlanned,
}: {
  readonly plantsPlanned: number | null;
  readonly seedParentsPlanned: number | null;
}): Refusal[] {
  if (plantsPlanned === null || seedParentsPlanned === null || seedParentsPlanned <= plantsPlanned) return [];
  const wrong = `seed parents are more than the ${plantsPlanned} plants`;
  const needed = "seed is kept from plants that stand: want more plants, or fewer seed parents";
  return [refusal("more-parents-than-plants", ["seedParentsPlanned"], seedParentsPlanned, wrong, needed)];
}

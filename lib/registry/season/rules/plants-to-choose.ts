import { addDays } from "@/lib/science/dates/civil-day";
import { scoredNotChosen } from "../../plants/scored-not-chosen";
import type { SeasonGrowOut, SeasonRecords, WaitingItem } from "../records";

export interface PlantsToChoose {
  readonly growOut: SeasonGrowOut;
  readonly scored: number;
}

/** Of a grow-out that was sown earlier nobody chooses any more. */
const daysSinceSowing = 730;

/**
 * Plants of a grow-out were scored and none of them is marked keep: what to keep is to be chosen before the harvest. Not where seed was taken, the end was
 * written, or the last possible day of sowing lies more than two years back. Source: trade practice.
 */
export function plantsToChoose({
  growOuts,
  scoredPlants,
  today,
}: SeasonRecords): WaitingItem<"plants-to-choose", PlantsToChoose>[] {
  const scoredOf = new Map(scoredPlants.map((each) => [each.growOutId, each]));
  return growOuts.flatMap((growOut) => {
    const plants = scoredOf.get(growOut.id);
    if (!plants || !scoredNotChosen(plants)) return [];
    if (growOut.sownLast !== null && growOut.sownLast < addDays(today, -daysSinceSowing)) return [];
    const facts = { growOut, scored: plants.scored };
    return [
      {
        rule: "plants-to-choose",
        place: "field",
        urgency: 1,
        varietyId: growOut.varietyId,
        lotId: null,
        facts,
      } as const,
    ];
  });
}

import { counted } from "@/lib/display/plurals";
import type { UnitSettings } from "@/lib/display/units";
import type { PlanGround, PlotInList } from "@/lib/registry/grow-outs/read-plan-ground";
import { crossOption, lotOption } from "../_words/lot-words";
import type { PlanOffers } from "./plan-fields";

/** What a plan's form offers, from what the plan is made on. Lots that hold nothing any more come last. */
export function offersOf(ground: PlanGround, units: UnitSettings): PlanOffers {
  const { crop, wanted } = ground;
  const { matingSystem, selfIncompatible, outcrossingPctMin, outcrossingPctMax } = crop;
  const held = ground.lots.filter((lot) => lot.grams === null || lot.grams > 0);
  const empty = ground.lots.filter((lot) => !held.includes(lot));
  return {
    lots: ground.lots,
    options: [...held, ...empty].map((lot) => lotOption(lot, units)),
    crosses: ground.crosses.map(crossOption),
    stewards: ground.stewards.map((name) => ({ value: name, words: name })),
    units,
    mating: { matingSystem, selfIncompatible, outcrossingPctMin, outcrossingPctMax },
    clonal: crop.clonal,
    plantsHint: plantsHint(crop, wanted),
  };
}

function plantsHint(
  { plantsRecommendedMin: low, plantsRecommendedMax: high }: PlanGround["crop"],
  wanted: PlanGround["wanted"],
): string {
  const better = low === null ? "" : `; better ${low === high || high === null ? low : `${low} to ${high}`}`;
  if (wanted === null) return `how many the crop wants is not known here${better}`;
  if (wanted.from === "variety") return `the variety asks for ${counted(wanted.plants, "plant")}`;
  return `the crop’s floor is ${counted(wanted.plants, "plant")}${better}`;
}

/** A plot in a list to choose from. */
export function plotOption({ id, name, steward, place }: PlotInList): { value: string; words: string } {
  return { value: id, words: [name, steward, place].filter(Boolean).join(", ") };
}

import type { SearchParameters } from "@/components/tables";
import type { PlantsGrid } from "@/lib/registry/plants/read-plants-grid";
import type { TraitLine } from "@/lib/registry/traits/list-traits";

/** The traits of a sheet: those that are ticked; before anything was asked, the variety's and the crop's own and those that were scored here. */
export function tickedTraits({ traits, plants }: PlantsGrid, parameters: SearchParameters): TraitLine[] {
  if (parameters.asked === undefined)
    return traits.filter((line) => line.scope !== "all" || plants.some((plant) => plant.scores.has(line.id)));
  const ticked = new Set([parameters.trait ?? []].flat());
  return traits.filter((line) => ticked.has(line.id));
}

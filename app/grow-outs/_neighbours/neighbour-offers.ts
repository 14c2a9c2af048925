import type { Option } from "@/components/ui";
import { metresTyped, type UnitSettings } from "@/lib/display/units";
import type { NamesForNeighbours } from "@/lib/registry/neighbours/names-for-neighbours";
import type { NeighbourRow, NeighboursRead } from "@/lib/registry/neighbours/read-neighbours";

/** What the form of a neighbour offers: all crops, the varieties of the registry each with its crop, the plots of the grow-out. */
export function neighbourOffers(
  names: NamesForNeighbours,
  read: NeighboursRead,
  units: UnitSettings,
): { crops: Option[]; varieties: Option[]; plots: Option[]; lengthUnit: string } {
  const crops = new Map(names.crops.map((crop) => [crop.id, crop.name]));
  return {
    crops: names.crops.map(({ id, name }) => ({ value: id, words: name })),
    varieties: names.varieties.map(({ id, name, cropId }) => ({
      value: id,
      words: `${name} (${crops.get(cropId) ?? "crop unknown"})`,
    })),
    plots: read.plots.map(({ id, name }) => ({ value: id, words: name })),
    lengthUnit: units.length,
  };
}

/** A neighbour source as it would have been typed in. */
export function neighbourAsTyped(neighbour: NeighbourRow, units: UnitSettings): Record<string, string> {
  const { distanceMetres } = neighbour;
  const typed = distanceMetres === null ? null : distanceMetres / metresTyped(1, units);
  return {
    what: neighbour.what,
    crop: neighbour.cropId ?? "",
    variety: neighbour.varietyId ?? "",
    plot: neighbour.plotId ?? "",
    distance: typed === null ? "" : String(Number(typed.toPrecision(6))),
    bearing: neighbour.bearing ?? "",
    sizeM2: neighbour.sizeM2 === null ? "" : String(neighbour.sizeM2),
    plants: neighbour.plants === null ? "" : String(neighbour.plants),
    windowFirst: neighbour.windowFirst ?? "",
    windowLast: neighbour.windowLast ?? "",
    howSure: neighbour.howSure ?? "",
    note: neighbour.note ?? "",
  };
}

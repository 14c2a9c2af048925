import type { Column, Row } from "@/components/tables";
import type { CropInList } from "@/lib/registry/crops/list-crops";

export const columns: readonly Column[] = [
  { key: "crop", name: "Crop", kind: "words", phone: "lead" },
  { key: "latin", name: "Latin name", kind: "words", phone: "none" },
  { key: "mating", name: "Mating", kind: "words" },
  { key: "life", name: "Life", kind: "words" },
  { key: "plants", name: "Floor of plants", kind: "count", phone: "none" },
  { key: "varieties", name: "Varieties here", kind: "count", phone: "aside", phoneName: "varieties" },
  { key: "own", name: "Own values", kind: "count" },
];

/** A crop as a row of the list. */
export function cropRow(crop: CropInList): Row {
  return {
    id: crop.id,
    cells: {
      crop: { kind: "link", words: crop.commonName, href: `/crops/${encodeURIComponent(crop.key)}` },
      latin: crop.latinName,
      mating: crop.matingSystem,
      life: crop.lifeCycle,
      plants: crop.plantsMin,
      varieties: crop.varieties === 0 ? "" : crop.varieties,
      own: crop.ownValues === 0 ? (crop.own ? "own crop" : "") : crop.ownValues,
    },
  };
}

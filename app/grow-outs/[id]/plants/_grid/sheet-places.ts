import { grouped } from "@/lib/registry/change-set/grouped";
import { markShown, type PlantOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";
import { sameName } from "@/lib/registry/names/fold-name";
import { plantCellText } from "@/lib/registry/plants/cells-of-plant";
import type { SheetRow } from "@/lib/schemas/plants/sheet-rows";
import type { SheetPlace } from "./sheet-order";

/**
 * The lines of a sheet in its order: plants on record by their tag, and rows that are offered for tags that no plant has and for those that are
 * written by hand. Where several plants have one tag, each line that says it takes the next of them.
 */
export function sheetPlaces(rows: readonly SheetRow[], plants: readonly PlantOfGrowOut[]): SheetPlace[] {
  const byTag = grouped(plants, (plant) => sameName(plantCellText("tag", plant, markShown(plant))));
  const keys = new Set<string>();
  return rows.map(({ tag, cell }, line): SheetPlace => {
    const plant = tag === null ? undefined : byTag.get(sameName(tag))?.find(({ id }) => !keys.has(id));
    const offered = tag === null || keys.has(`sheet:${tag}`) ? `sheet:#${line}` : `sheet:${tag}`;
    const key = plant?.id ?? offered;
    keys.add(key);
    return { key, onRecord: plant !== undefined, tag, cell };
  });
}

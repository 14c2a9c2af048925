import type { SearchParameters } from "@/components/tables";
import type { PlantsGrid } from "@/lib/registry/plants/read-plants-grid";
import { readSheetRows, sheetTraits } from "@/lib/schemas/plants/sheet-rows";
import { accepted, type Outcome } from "@/lib/science/outcome";
import type { SheetOfGrid } from "../_grid/grid-data";
import { sheetPlaces } from "../_grid/sheet-places";

/** A sheet with the text of its rows, as it stands in its head. */
export type SheetAskedFor = SheetOfGrid & { readonly text: string };

/** The field sheet that the address asks for; null where it asks for none. Refused where its rows are none. */
export function sheetAskedFor(parameters: SearchParameters, read: PlantsGrid): Outcome<SheetAskedFor> | null {
  const one = (name: string) => [parameters[name] ?? []].flat()[0]?.trim() ?? "";
  const text = one("sheet");
  if (text === "") return null;
  const rows = readSheetRows(text);
  if (!rows.ok) return rows;
  const traits = sheetTraits(
    one("traits"),
    read.traits.map((line) => line.id),
  );
  return accepted({ text, places: sheetPlaces(rows.value, read.plants), traits, on: one("on") });
}

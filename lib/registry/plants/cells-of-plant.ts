import type { PlantField } from "@/lib/schemas/plants/plant-cells";
import type { PlantOfGrowOut, StandingMark } from "../grow-outs/plants-of-grow-out";

/** What stands in the cells of a plant that are no scores. A plant that has no mark is known by its name alone. */
export function plantCellText(
  field: PlantField,
  plant: Pick<PlantOfGrowOut, "name" | "cell">,
  mark: StandingMark | null,
): string {
  switch (field) {
    case "tag":
      return mark?.tag ?? plant.name;
    case "intent":
      return mark?.intent ?? "";
    case "cell":
      return plant.cell ?? "";
    case "words":
      return mark?.words ?? "";
    case "fate":
      return mark?.fate ?? "";
  }
}

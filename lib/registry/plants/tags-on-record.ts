import { markShown, type PlantOfGrowOut } from "../grow-outs/plants-of-grow-out";
import { plantCellText } from "./cells-of-plant";

/** Every tag that a grow-out's plants have or are kept under: none of them is free for another plant. */
export function tagsOnRecord(plants: readonly PlantOfGrowOut[]): string[] {
  return plants.flatMap((plant) => [plant.name, plantCellText("tag", plant, markShown(plant))]);
}

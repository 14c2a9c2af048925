import { grouped } from "../change-set/grouped";
import { markShown, type PlantOfGrowOut } from "../grow-outs/plants-of-grow-out";
import { sameName } from "../names/fold-name";
import { plantCellText } from "./cells-of-plant";

/** A tag that several plants of one grow-out have: a question for a person, never a fault. */
export interface TagTwice {
  readonly tag: string;
  readonly plants: readonly PlantOfGrowOut[];
}

/** Tags that more than one plant has, in the order in which they first came. */
export function tagsTwice(plants: readonly PlantOfGrowOut[]): TagTwice[] {
  return [...grouped(plants, (plant) => sameName(plantCellText("tag", plant, markShown(plant))))]
    .filter(([, same]) => same.length > 1)
    .map(([tag, same]) => ({ tag, plants: same }));
}

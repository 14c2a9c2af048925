import { type Intent, intents } from "@/lib/schemas/plants/plant-cells";
import { grouped } from "../change-set/grouped";
import { markShown, type PlantOfGrowOut } from "../grow-outs/plants-of-grow-out";

/** The plants of one cell, and those of them that are marked keep. */
export interface CellInShort {
  /** null: nobody wrote where they stand */
  readonly cell: string | null;
  readonly plants: number;
  readonly keep: number;
}

/** How a grow-out's plants are marked, by the newest mark of each. */
export interface MarksInShort {
  readonly plants: number;
  readonly intents: Readonly<Record<Intent, number>>;
  readonly unmarked: number;
  /** two stewards marked them otherwise */
  readonly disputed: readonly PlantOfGrowOut[];
  /** in the order in which they first came */
  readonly cells: readonly CellInShort[];
}

/** Counts the marks, and how those to be kept are spread over the cells. */
export function marksInShort(plants: readonly PlantOfGrowOut[]): MarksInShort {
  const intentOf = (plant: PlantOfGrowOut) => markShown(plant)?.intent;
  const count = (intent: string | undefined) => plants.filter((plant) => intentOf(plant) === intent).length;
  return {
    plants: plants.length,
    intents: Object.fromEntries(intents.map((intent) => [intent, count(intent)])) as Record<Intent, number>,
    unmarked: count(undefined),
    disputed: plants.filter((plant) => new Set(plant.marks.map((mark) => mark.intent)).size > 1),
    cells: [...grouped(plants, (plant) => plant.cell)].map(([cell, own]) => ({
      cell,
      plants: own.length,
      keep: own.filter((plant) => intentOf(plant) === "keep").length,
    })),
  };
}

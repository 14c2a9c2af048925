import type { PlantToChoose } from "./choice-ground";
import type { SavedRow } from "./save-plants";

/** A choice as it is to be written. */
export interface ChoiceToWrite {
  readonly kept: ReadonlySet<string>;
  /** left out by hand, each with why */
  readonly leftOut: ReadonlyMap<string, string>;
  /** what becomes of the others that are marked keep by now */
  readonly others: "watch" | "stay";
}

/** What a choice writes: a row of the grid for each plant whose mark changes, and how many of each kind. */
export interface RowsOfChoice {
  readonly rows: readonly SavedRow[];
  /** newly marked keep */
  readonly keep: number;
  /** marked keep before, and kept */
  readonly already: number;
  /** marked keep before, and not among the kept */
  readonly watch: number;
  /** marked watch with the reason why they were left out */
  readonly leftOut: number;
}

/** How a reason is written into the words of a mark. */
export function reasonInWords(words: string, reason: string): string {
  const said = `left out: ${reason.trim()}`;
  if (words.includes(said)) return words;
  return words === "" ? said : `${words}; ${said}`;
}

/**
 * The rows of the grid that write a choice: the kept are marked keep; those left out by hand are marked watch, with why; others that are marked keep become watch, or
 * stay. Every row tells what stood there, so that what somebody else wrote meanwhile is not written over. What stands already is not written again.
 */
export function rowsOfChoice(plants: readonly PlantToChoose[], choice: ChoiceToWrite): RowsOfChoice {
  const { kept, leftOut, others } = choice;
  const rows: SavedRow[] = [];
  const counts = { keep: 0, already: 0, watch: 0, leftOut: 0 };
  for (const plant of plants) {
    const { intent, words } = plant;
    const reason = leftOut.get(plant.id);
    const write = (becomes: string, says: string = words) => {
      const cells = {
        ...(becomes === intent ? {} : { intent: { text: becomes, was: intent } }),
        ...(says === words ? {} : { words: { text: says, was: words } }),
      };
      if (Object.keys(cells).length > 0) rows.push({ key: plant.id, added: false, cells });
      return Object.keys(cells).length > 0;
    };
    if (kept.has(plant.id)) {
      if (write("keep")) counts.keep += 1;
      else counts.already += 1;
    } else if (reason !== undefined) {
      if (write("watch", reasonInWords(words, reason))) counts.leftOut += 1;
    } else if (intent === "keep" && plant.gone === null && others === "watch") {
      write("watch");
      counts.watch += 1;
    }
  }
  return { rows, ...counts };
}

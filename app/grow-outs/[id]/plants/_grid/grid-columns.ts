import type { GridColumn } from "@/components/grid";
import { directionInWords, stepsInWords, traitKindInWords } from "@/lib/display/scores";
import { fates, intents, type PlantField, readPlantCell } from "@/lib/schemas/plants/plant-cells";
import { traitColumn } from "@/lib/schemas/plants/save-plants";
import { readScore, scoreText } from "@/lib/schemas/traits/read-score";
import { no, notLooked, yes } from "@/lib/schemas/traits/score-value";
import { scaleEnds, type TraitDefinition, type TraitKind } from "@/lib/schemas/traits/trait";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { accepted } from "@/lib/science/outcome";
import type { TraitOfGrid } from "./grid-data";

/** the column by which a person knows a plant */
export const nameColumn = "tag";

const fieldColumns: Readonly<
  Record<PlantField, { name: string; width: number; hint: string; choices: readonly string[] }>
> = {
  tag: { name: "Tag", width: 5.5, hint: "What stands on the plant’s tag, as it is written.", choices: [] },
  intent: { name: "Intent", width: 5.5, hint: "keep, watch or pull; k, w or p will do.", choices: intents },
  cell: {
    name: "Cell",
    width: 5,
    hint: "The part of the plot in which it stands; plants are compared within it.",
    choices: [],
  },
  words: { name: "Words", width: 14, hint: "A word about it: early, two ears, stood in the gale.", choices: [] },
  fate: { name: "What became of it", width: 9, hint: "harvested, lost, eaten or rogued later.", choices: fates },
};

/** The columns of the grid: tag, intent, cell, the traits that are shown, words, fate. */
export function gridColumns(traits: readonly TraitOfGrid[], hemisphere: Hemisphere): GridColumn[] {
  return [
    ...(["tag", "intent", "cell"] as const).map(fieldColumn),
    ...traits.map((trait) => traitColumnOf(trait, hemisphere)),
    ...(["words", "fate"] as const).map(fieldColumn),
  ];
}

function fieldColumn(field: PlantField): GridColumn {
  const { choices, ...rest } = fieldColumns[field];
  return {
    key: field,
    kind: "words",
    inputMode: "text",
    choices: choices.map((choice) => ({ text: choice, words: choice })),
    read: (typed) => readPlantCell(field, typed),
    ...rest,
  };
}

const mostButtons = 11;
const widths: Readonly<Partial<Record<TraitKind, number>>> = { "yes-no": 7, category: 8, date: 8 };
const numbers: readonly TraitKind[] = ["count", "measure", "scale"];
const typing: Readonly<Record<TraitKind, string>> = {
  count: "A whole number.",
  measure: "A number, with a point or a comma.",
  scale: "A step of the scale.",
  "yes-no": "y for yes, n for no, - for not looked.",
  category: "A word of the list; its beginning will do.",
  date: "2024-08-20, 2024-08, or about: 2024-08~.",
};

function traitColumnOf({ id, definition }: TraitOfGrid, hemisphere: Hemisphere): GridColumn {
  const { kind, name, unit } = definition;
  const steps = stepsInWords(definition);
  const said = kind === "scale" || kind === "category" ? traitKindInWords(definition) : "";
  const meaning = [said, steps, directionInWords(definition)].filter(Boolean).join("; ");
  return {
    key: traitColumn(id),
    name: unit === null ? name : `${name}, ${unit}`,
    kind: numbers.includes(kind) ? "number" : "words",
    width: widths[kind] ?? 5.5,
    hint: `${typing[kind]} ${meaning.charAt(0).toUpperCase()}${meaning.slice(1)}.`,
    inputMode: kind === "measure" ? "decimal" : kind === "count" || kind === "scale" ? "numeric" : "text",
    choices: answersOf(definition),
    read: (typed) => {
      const read = readScore(definition, typed, hemisphere);
      return read.ok ? accepted(scoreText(read.value)) : read;
    },
  };
}

/** The answers that can be pressed, where they are few. */
function answersOf(definition: TraitDefinition): GridColumn["choices"] {
  const { kind, wording } = definition;
  const answers = (texts: readonly string[]) =>
    texts.length > mostButtons ? [] : texts.map((text) => ({ text, words: wording.steps[text] ?? text }));
  if (kind === "yes-no") return answers([yes, no, notLooked]);
  if (kind === "category") return answers(wording.choices);
  if (kind !== "scale") return [];
  const [low, high] = scaleEnds(definition);
  return answers(Array.from({ length: high - low + 1 }, (_, step) => String(low + step)));
}

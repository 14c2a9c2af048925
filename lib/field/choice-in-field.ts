import type { FieldPack, TraitInField } from "@/lib/schemas/field/field-pack";
import type { FieldBody } from "@/lib/schemas/field/field-records";
import type { ChoiceGround, PlantToChoose, ScoreToCompare, TraitToWeigh } from "@/lib/schemas/plants/choice-ground";
import { goneByMark } from "@/lib/schemas/plants/gone-by-mark";
import type { Intent } from "@/lib/schemas/plants/plant-cells";
import { scoreNumber } from "@/lib/schemas/traits/score-number";
import { no, type ScoreValue, yes } from "@/lib/schemas/traits/score-value";
import type { FieldState, PlantShown, ScoreShown } from "./screen-state";

/**
 * What a choice is made from in the field: as the pack has it, with the plants, marks and scores as they are on this phone now. Null where the pack is
 * of an earlier release and tells nothing of it. `words` writes a score as the screens do.
 */
export function choiceInField(
  pack: FieldPack,
  state: FieldState,
  words: (trait: TraitInField, score: ScoreShown) => string,
): ChoiceGround | null {
  const { choice, hand } = pack;
  if (!choice) return null;
  const told = new Map(choice.plants.map((plant) => [plant.id, plant]));
  const inPack = new Set(pack.plants.flatMap(({ scores }) => scores.map(({ id }) => id)));
  const traits = new Map(pack.traits.map((trait) => [trait.first, trait]));
  const names = new Map<string, number>();
  const plants = state.plants.map((shown): PlantToChoose => {
    const before = told.get(shown.plant.id) ?? null;
    const scores = choice.traits.flatMap((trait): [string, readonly ScoreToCompare[]][] => {
      const scored = scoresNow(trait, before?.scores[trait.key] ?? [], shown.scores[trait.key], inPack, hand.stewardId);
      return scored.length === 0 ? [] : [[trait.key, scored]];
    });
    const said = Object.entries(shown.scores).flatMap(([key, score]): [string, string][] => {
      const trait = traits.get(key);
      if (inPack.has(score.id)) return before?.said[key] === undefined ? [] : [[key, before.said[key]]];
      return trait ? [[key, words(trait, score)]] : [];
    });
    return {
      ...placeOfPlant(shown),
      id: shown.plant.id,
      name: nameOnce(names, before?.name ?? shown.tag ?? shown.plant.name),
      tag: shown.tag ?? shown.plant.name,
      intent: shown.mark?.intent ?? "",
      words: shown.mark?.words ?? "",
      gone: goneByMark({ intent: shown.mark?.intent ?? "", fate: shown.fate }),
      scores: Object.fromEntries(scores),
      said: Object.fromEntries(said),
    };
  });
  const scorers = new Set(
    plants.flatMap(({ scores }) =>
      Object.values(scores)
        .flat()
        .map(({ by }) => by),
    ),
  );
  const known = new Map(choice.people.map(({ id, name }) => [id, name]));
  return {
    ...choice,
    plants,
    traits: choice.traits.filter(({ key }) => plants.some(({ scores, said }) => scores[key] ?? said[key])),
    people: [...scorers].map((id) => ({ id, name: known.get(id) ?? (id === hand.stewardId ? hand.name : "somebody") })),
  };
}

/** The scores of a plant that can be compared: those of the pack, and this hand's newest in the place of its own. */
function scoresNow(
  trait: TraitToWeigh,
  before: readonly ScoreToCompare[],
  shown: ScoreShown | undefined,
  inPack: ReadonlySet<string>,
  hand: string | null,
): readonly ScoreToCompare[] {
  if (shown === undefined) return [];
  if (inPack.has(shown.id)) return before;
  const value = scoreNumber(trait.definition, asStored(trait, shown));
  const others = before.filter(({ by }) => by !== hand);
  return value === null ? others : [...others, { by: hand, value }];
}

/** A phone says yes and no as 1 and 0; the registry stores them in words. */
function asStored({ definition }: TraitToWeigh, { value, text }: ScoreShown): ScoreValue {
  if (definition.kind !== "yes-no" || text !== null) return { value, text };
  return { value: null, text: value === 1 ? yes : value === 0 ? no : null };
}

function placeOfPlant({ plant: { cell, row, position } }: PlantShown) {
  return { cell, row, position };
}

/** Two plants with one tag are told apart by how many come before. */
function nameOnce(names: Map<string, number>, name: string): string {
  const before = names.get(name) ?? 0;
  names.set(name, before + 1);
  return before === 0 ? name : `${name} (${before + 1})`;
}

/** What the choice writes of a plant, as a row of the grid tells it: its cells by their column. */
export interface RowOfChoice {
  readonly key: string;
  readonly cells: Readonly<Record<string, { readonly text: string }>>;
}

/** The mark that writes such a row on the phone; null where the plant is not here. */
export function markOfChoice({ key, cells }: RowOfChoice, { plants }: FieldState): FieldBody<"mark"> | null {
  const shown = plants.find(({ plant }) => plant.id === key);
  if (!shown) return null;
  const intent = (cells.intent?.text ?? shown.mark?.intent ?? "keep") as Intent;
  const words = (cells.words?.text ?? shown.mark?.words ?? "").trim() || null;
  const tag = shown.mark ? shown.tag : shown.plant.name;
  return { plant: shown.plant, tag, intent, words, fate: null, replaces: shown.mark?.id ?? null };
}

import { type PlantField, plantFields, readPlantCell } from "@/lib/schemas/plants/plant-cells";
import { type SavedRow, traitOfColumn } from "@/lib/schemas/plants/save-plants";
import { readScore, scoreText } from "@/lib/schemas/traits/read-score";
import type { ScoreValue } from "@/lib/schemas/traits/score-value";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { type Refusal, refusal } from "@/lib/science/outcome";
import {
  markShown,
  type PlantOfGrowOut,
  type StandingMark,
  type StandingScore,
  scoreInCell,
} from "../grow-outs/plants-of-grow-out";
import { sameName } from "../names/fold-name";
import type { TraitLine } from "../traits/list-traits";
import { plantCellText } from "./cells-of-plant";
import { freeName } from "./free-name";

/** What a row of the grid is held against. */
export interface Ground {
  readonly traits: ReadonlyMap<string, TraitLine>;
  readonly hemisphere: Hemisphere;
  /** names of the grow-out's plants; a new plant's is added */
  readonly names: Set<string>;
  /** who marked and scored; null: not said */
  readonly stewardId: string | null;
}

type MarkFields = Pick<StandingMark, "tag" | "intent" | "words" | "fate">;

/** What one row writes. */
export interface PlannedRow {
  readonly key: string;
  /** the plant that is new; null where it stands */
  readonly plant: { readonly name: string; readonly cell: string | null } | null;
  readonly patch: { readonly name?: string; readonly cell?: string | null };
  readonly mark: (MarkFields & { readonly replacesId: string | null }) | null;
  /** the mark that is taken back */
  readonly unmarked: string | null;
  readonly scores: readonly PlannedScore[];
}

export interface PlannedScore extends ScoreValue {
  readonly traitId: string;
  readonly replacesId: string | null;
  readonly takenBack: boolean;
}

const fieldNames: Readonly<Record<PlantField, string>> = {
  tag: "tag",
  intent: "intent",
  cell: "cell",
  words: "words",
  fate: "what became of it",
};

/** Reads a row's cells against what stands, and says what has to be written; or why not, by row and column. */
export function planRow(row: SavedRow, plant: PlantOfGrowOut | null, ground: Ground): PlannedRow | readonly Refusal[] {
  const refusals: Refusal[] = [];
  const label = plant ? plantCellText("tag", plant, markShown(plant)) : (row.cells.tag?.text ?? "").trim();
  const refuse = (column: string, name: string, each: Refusal) => {
    refusals.push({
      ...each,
      path: [row.key, column],
      sentence: `plant ${label || "without a tag"}, ${name}: ${each.sentence}`,
    });
  };
  const texts = new Map<PlantField, string | null>();
  const scores: PlannedScore[] = [];
  for (const [column, { text, was }] of Object.entries(row.cells)) {
    const field = plantFields.find((each) => each === column);
    const line = ground.traits.get(traitOfColumn(column) ?? "");
    const name = field ? fieldNames[field] : line?.newest.name;
    if (name === undefined) {
      refuse(column, column, refusal("unknown-column", [], column, "is no column here", "read the page again"));
      continue;
    }
    const shown = plant && line ? scoreInCell(plant, line.id, ground.stewardId) : null;
    const stands = field ? (plant ? plantCellText(field, plant, markShown(plant)) : "") : shown ? scoreText(shown) : "";
    if (stands !== was) {
      const wrong = `was written over meanwhile: ${stands === "" ? "nothing" : `"${stands}"`} stands there now`;
      refuse(
        column,
        name,
        refusal("changed-since", [], text, wrong, "look again, and write it anew if it is still right"),
      );
      continue;
    }
    if (text.trim() === "") {
      if (field) texts.set(field, null);
      else if (plant && line && shown) scores.push(takenBack(shown));
      continue;
    }
    if (field) {
      const read = readPlantCell(field, text);
      if (read.ok) texts.set(field, read.value);
      else for (const each of read.refusals) refuse(column, name, each);
    } else if (line) {
      const read = readScore(line.newest, text, ground.hemisphere);
      if (!read.ok) for (const each of read.refusals) refuse(column, name, each);
      else if (!shown || scoreText(read.value) !== scoreText(shown))
        scores.push({ ...read.value, traitId: line.newest.id, ...inPlaceOf(plant?.scores.get(line.id) ?? [], ground) });
    }
  }
  const refuseField = (field: PlantField, each: Refusal) => refuse(field, fieldNames[field], each);
  const planned = plant ? standing(plant, texts, ground, refuseField) : added(texts, ground, refuseField);
  return refusals.length > 0 ? refusals : { key: row.key, scores, ...planned };
}

/** A new score or mark stands in the place of the same person's, or of one whose author nobody wrote; another's stands beside it. */
function inPlaceOf(
  events: readonly { readonly id: string; readonly stewardId: string | null }[],
  { stewardId }: Ground,
): { replacesId: string | null; takenBack: false } {
  const own = events.findLast((event) => event.stewardId === stewardId);
  const last = events.at(-1);
  const open = last && (last.stewardId === null || stewardId === null) ? last : undefined;
  return { replacesId: (own ?? open)?.id ?? null, takenBack: false };
}

function takenBack(score: StandingScore): PlannedScore {
  return { value: score.value, text: score.text, traitId: score.traitId, replacesId: score.id, takenBack: true };
}

type Texts = ReadonlyMap<PlantField, string | null>;
type Refuse = (field: PlantField, refusal: Refusal) => void;
type Planned = Omit<PlannedRow, "key" | "scores">;

const needsIntent = "write keep, watch or pull as its intent";

function added(texts: Texts, { names }: Ground, refuse: Refuse): Planned {
  const tag = texts.get("tag") ?? null;
  const intent = texts.get("intent") ?? null;
  if (tag === null) refuse("tag", refusal("missing", [], "", "stands here", "write what stands on the plant's tag"));
  const said = { tag, words: texts.get("words") ?? null, fate: texts.get("fate") ?? null };
  if (intent === null) refuseWithoutIntent(said, tag !== null && names.has(sameName(tag)), refuse);
  const name = freeName(names, tag ?? "");
  if (tag !== null) names.add(name);
  return {
    plant: { name, cell: texts.get("cell") ?? null },
    patch: {},
    mark: intent === null ? null : { ...said, intent, replacesId: null },
    unmarked: null,
  };
}

/** Words and a tag that another plant has need a mark to stand on. */
function refuseWithoutIntent(said: Omit<MarkFields, "intent">, taken: boolean, refuse: Refuse): void {
  if (taken) refuse("tag", refusal("tag-taken", [], said.tag, "is another plant's too", needsIntent));
  for (const field of ["words", "fate"] as const)
    if (said[field] !== null) refuse(field, refusal("not-marked", [], said[field], "belongs to a mark", needsIntent));
}

function standing(plant: PlantOfGrowOut, texts: Texts, ground: Ground, refuse: Refuse): Planned {
  const patch: { name?: string; cell?: string | null } = texts.has("cell") ? { cell: texts.get("cell") ?? null } : {};
  const nothing: Planned = { plant: null, patch, mark: null, unmarked: null };
  const shown = markShown(plant);
  const touched = (["tag", "intent", "words", "fate"] as const).filter((field) => texts.has(field));
  if (touched.length === 0) return nothing;
  if (texts.get("tag") === null) {
    refuse("tag", refusal("missing", [], "", "stands here", "write what stands on the plant's tag"));
    return nothing;
  }
  const said = (field: "tag" | "intent" | "words" | "fate") =>
    texts.has(field) ? (texts.get(field) ?? null) : (shown?.[field] ?? null);
  const intent = said("intent");
  if (intent === null && shown) return { ...nothing, unmarked: shown.id };
  if (intent === null) {
    const tag = texts.get("tag") ?? null;
    const taken = tag !== null && ground.names.has(sameName(tag));
    refuseWithoutIntent({ tag, words: said("words"), fate: said("fate") }, taken, refuse);
    // A plant that has no mark is known by its number alone: another number is its name put right.
    if (tag === null || taken) return nothing;
    ground.names.delete(plant.name);
    ground.names.add(sameName(tag));
    return { ...nothing, patch: { ...patch, name: sameName(tag) } };
  }
  const { replacesId } = inPlaceOf(plant.marks, ground);
  const own = replacesId !== null && replacesId === shown?.id;
  // Beside another's mark stands what this one says itself, with the tag that both saw.
  const words = own || texts.has("words") ? said("words") : null;
  const fate = own || texts.has("fate") ? said("fate") : null;
  return { ...nothing, mark: { tag: said("tag") ?? plant.name, intent, words, fate, replacesId } };
}

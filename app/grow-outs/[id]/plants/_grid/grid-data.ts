import type { GridRow } from "@/components/grid";
import { dateInWords } from "@/lib/display/dates";
import { listed } from "@/lib/display/plurals";
import { scoreInWords } from "@/lib/display/scores";
import {
  markShown,
  type PlantOfGrowOut,
  type StandingScore,
  scoreShown,
} from "@/lib/registry/grow-outs/plants-of-grow-out";
import { plantCellText } from "@/lib/registry/plants/cells-of-plant";
import type { PlantsGrid } from "@/lib/registry/plants/read-plants-grid";
import { tagsTwice } from "@/lib/registry/plants/tags-twice";
import type { TraitLine } from "@/lib/registry/traits/list-traits";
import { plantFields } from "@/lib/schemas/plants/plant-cells";
import { traitColumn } from "@/lib/schemas/plants/save-plants";
import { scoreText } from "@/lib/schemas/traits/read-score";
import type { TraitDefinition } from "@/lib/schemas/traits/trait";
import type { SheetPlace } from "./sheet-order";

/** A trait as a column of the grid needs it. */
export interface TraitOfGrid {
  readonly id: string;
  readonly definition: TraitDefinition;
  readonly version: number;
  /** false for a shared trait by which nothing here was scored: it is brought in when it is wanted */
  readonly shown: boolean;
}

/** A field sheet that is typed in: its lines, its traits from left to right, and the day that was printed on it ("" where written by hand). */
export interface SheetOfGrid {
  readonly places: readonly SheetPlace[];
  readonly traits: readonly string[];
  readonly on: string;
}

export interface GridData {
  readonly sheet: SheetOfGrid | null;
  readonly rows: readonly GridRow[];
  readonly traits: readonly TraitOfGrid[];
  readonly people: readonly { readonly value: string; readonly words: string }[];
  /** each person's own score texts, by plant and column; of nobody where nobody said who scored */
  readonly own: OwnScores;
}

/** By the row's key and the column: the place of the person among the people, and what that person scored. */
export type OwnScores = Readonly<Record<string, Readonly<Record<string, readonly (readonly [number, string])[]>>>>;

/** The grid's rows and traits as they go to the browser; the traits of a sheet stand first, as they lie on it. */
export function gridData({ plants, traits, people }: PlantsGrid, sheet: SheetOfGrid | null = null): GridData {
  const names = new Map(people.map((person) => [person.stewardId, person.name]));
  const twice = new Set(tagsTwice(plants).flatMap((tag) => tag.plants.map((plant) => plant.id)));
  const place = new Map(sheet?.traits.map((id, at) => [id, at]));
  const placeOf = (line: TraitLine) => place.get(line.id) ?? place.size;
  return {
    sheet,
    rows: plants.map((plant) => gridRow(plant, traits, names, twice.has(plant.id))),
    traits: traits
      .toSorted((left, right) => placeOf(left) - placeOf(right))
      .map((line) => ({
        id: line.id,
        definition: line.newest,
        version: line.newest.version,
        shown: line.scope !== "all" || place.has(line.id) || plants.some((plant) => plant.scores.has(line.id)),
      })),
    people: people.map(({ stewardId, name }) => ({ value: stewardId, words: name })),
    own: ownScores(plants, new Map(people.map(({ stewardId }, at) => [stewardId, at]))),
  };
}

function ownScores(plants: readonly PlantOfGrowOut[], places: ReadonlyMap<string, number>): OwnScores {
  const scored = plants.map(({ id, scores }) => {
    const columns = [...scores].map(([traitId, given]) => {
      const own = given.flatMap((score) => {
        const place = places.get(score.stewardId ?? "");
        return place === undefined ? [] : [[place, scoreText(score)] as const];
      });
      return [traitColumn(traitId), own] as const;
    });
    return [id, Object.fromEntries(columns.filter(([, own]) => own.length > 0))] as const;
  });
  return Object.fromEntries(scored.filter(([, columns]) => Object.keys(columns).length > 0));
}

type Note = GridRow["notes"][string];
type Names = ReadonlyMap<string, string>;

function gridRow(plant: PlantOfGrowOut, traits: readonly TraitLine[], names: Names, twice: boolean): GridRow {
  const mark = markShown(plant);
  const stored: Record<string, string> = {};
  const notes: Record<string, Note> = {};
  for (const field of plantFields) {
    const text = plantCellText(field, plant, mark);
    if (text !== "") stored[field] = text;
  }
  const tagNotes = [
    twice ? "another plant has this tag too" : "",
    mark !== null && stored.tag !== plant.name ? `kept as plant ${plant.name}` : "",
  ].filter(Boolean);
  if (tagNotes.length > 0) notes.tag = { words: `${tagNotes.join("; ")}.`, open: twice };
  if (mark) notes.intent = markNote(plant, names);
  for (const line of traits) {
    const shown = scoreShown(plant, line.id);
    if (!shown) continue;
    stored[traitColumn(line.id)] = scoreText(shown);
    notes[traitColumn(line.id)] = scoreNote(line, plant.scores.get(line.id) ?? [], names);
  }
  return { key: plant.id, added: false, stored, notes };
}

function by(stewardId: string | null, on: string | null, names: Names): string {
  const who = stewardId === null ? "by somebody" : `by ${names.get(stewardId) ?? "a steward"}`;
  return on === null ? who : `${who}, ${dateInWords(on)}`;
}

function markNote({ marks }: PlantOfGrowOut, names: Names): Note {
  if (marks.length === 1 && marks[0])
    return { words: `Marked ${by(marks[0].stewardId, marks[0].on, names)}.`, open: false };
  const words = `Marked ${listed(marks.map((mark) => `${mark.intent} ${by(mark.stewardId, mark.on, names)}`))}.`;
  return { words, open: true };
}

/** Who scored, and by which version where it is not the newest; two people's scores stand side by side. */
function scoreNote(line: TraitLine, scores: readonly StandingScore[], names: Names): Note {
  const said = scores.map((score) => {
    const version = line.versions.find((each) => each.id === score.traitId) ?? line.newest;
    const old = version.id === line.newest.id ? "" : `, by version ${version.version} of the trait`;
    return `${scoreInWords(version, score)} ${by(score.stewardId, score.on, names)}${old}`;
  });
  const open = scores.length > 1 || scores.some((score) => score.traitId !== line.newest.id);
  return { words: `Scored ${listed(said)}.`, open };
}

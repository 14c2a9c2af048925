import type { FieldPack } from "@/lib/schemas/field/field-pack";
import type { FieldBody, FieldRecord, FieldRecordOf, PlantInField } from "@/lib/schemas/field/field-records";
import type { Intent } from "@/lib/schemas/plants/plant-cells";
import type { KeptRecord } from "./kept-rows";
import { nextTag } from "./next-tag";

/*
 * What the screens of a grow-out show: its pack, and over it what this phone recorded since. Nothing is remembered beside the two, so a screen
 * after a reload is the same.
 */

export interface ScoreShown {
  /** the record or row that says it: what a correction replaces */
  readonly id: string;
  readonly value: number | null;
  readonly text: string | null;
}

export interface PlantShown {
  readonly plant: PlantInField;
  /** the mark that stands; null: it is only scored */
  readonly mark: { readonly id: string; readonly intent: Intent; readonly words: string | null } | null;
  readonly tag: string | null;
  readonly fate: string | null;
  /** by the first version of the trait */
  readonly scores: Readonly<Record<string, ScoreShown>>;
  readonly photos: number;
  /** the place of its last record on this phone; 0: all of it came with the pack */
  readonly touched: number;
}

export interface WalkShown {
  readonly record: string | null;
  readonly on: string;
  readonly stage: string | null;
  readonly timing: string | null;
  readonly looked: number | null;
  readonly pulled: number;
}

export interface CountShown {
  readonly record: string | null;
  readonly stage: string;
  readonly plants: number;
  readonly on: string | null;
}

export interface FloweringShown {
  readonly record: string | null;
  readonly organ: string;
  readonly moment: string;
  readonly on: string;
}

/** Seed of one plant in the harvest that is under way. */
export interface TakenShown {
  readonly record: string;
  readonly plant: PlantInField;
  readonly fate: FieldBody<"taken">["fate"];
  readonly grams: number | null;
  readonly seeds: number | null;
}

export interface FieldState {
  /** the last touched on this phone first, then those of the pack by their tag */
  readonly plants: readonly PlantShown[];
  readonly nextTag: string;
  /** tags that stand on more than one plant; nothing is renamed */
  readonly tagsTwice: readonly string[];
  readonly walks: readonly WalkShown[];
  readonly counts: readonly CountShown[];
  readonly flowering: readonly FloweringShown[];
  /** the harvest under way on this phone; null: none is */
  readonly harvest: { readonly harvestId: string; readonly taken: readonly TakenShown[] } | null;
  readonly harvests: number;
  /** records taken back */
  readonly undone: ReadonlySet<string>;
}

/** The state of a grow-out on this phone: `kept` are its records in their order. What was put away is shown no more. */
export function fieldState(pack: FieldPack, kept: readonly KeptRecord[]): FieldState {
  const rows = kept.filter((row) => !row.putAway);
  const undone = undoneBy(rows);
  const standing = rows.filter((row) => row.record.kind !== "undo" && !undone.has(row.id));
  const since = standing.filter((row) => !isInPack(row, pack));
  const plants = plantsShown(pack, standing, undone);
  const tags = plants.flatMap((each) => (each.tag === null ? [] : [each.tag]));
  const used = standing.flatMap(({ record }) => (record.kind === "mark" && record.body.tag ? [record.body.tag] : []));
  return {
    plants,
    nextTag: nextTag(used.at(-1) ?? null, [...tags, ...plants.map((each) => each.plant.name)]),
    tagsTwice: [...new Set(tags.filter((tag, at) => tags.indexOf(tag) !== at))],
    walks: [...pack.walks.map((walk) => ({ record: null, ...walk })), ...of("walk", since).map(walkShown)],
    counts: [
      ...pack.counts.map((count) => ({ record: null, ...count })),
      ...of("count", since).map(({ id, on, body: { stage, plants } }) => ({ record: id, stage, plants, on })),
    ],
    flowering: [
      ...pack.flowering.map((seen) => ({ record: null, ...seen })),
      ...of("flowering", since).map(({ id, on, body: { organ, moment } }) => ({ record: id, organ, moment, on })),
    ],
    harvest: harvestUnderWay(standing),
    harvests: pack.harvests.length + of("harvest", since).length,
    undone,
  };
}

/** Records that were taken back: by an undo that was not itself taken back. */
export function undoneBy(rows: readonly KeptRecord[]): ReadonlySet<string> {
  const undone = new Set<string>();
  for (const { record } of [...rows].sort((a, b) => b.sequence - a.sequence)) {
    if (record.kind === "undo" && !undone.has(record.id)) undone.add(record.body.of);
  }
  return undone;
}

/** True where the registry had the record before it made the pack; both moments are by the registry's clock. */
function isInPack({ state, answeredAt }: KeptRecord, { madeAt }: FieldPack): boolean {
  return (state === "taken" || state === "held") && answeredAt !== null && answeredAt <= madeAt;
}

function of<K extends FieldRecord["kind"]>(kind: K, rows: readonly KeptRecord[]): FieldRecordOf<K>[] {
  return rows.flatMap(({ record }) => (record.kind === kind ? [record as FieldRecordOf<K>] : []));
}

function walkShown({ id, on, body }: FieldRecordOf<"walk">): WalkShown {
  const { stage, timing, looked } = body;
  return { record: id, on, stage, timing, looked, pulled: body.pulled.reduce((sum, each) => sum + each.plants, 0) };
}

interface Drawn {
  plant: PlantInField;
  mark: PlantShown["mark"];
  tag: string | null;
  fate: string | null;
  scores: Record<string, ScoreShown>;
  photos: number;
  touched: number;
}

function plantsShown(pack: FieldPack, standing: readonly KeptRecord[], undone: ReadonlySet<string>): PlantShown[] {
  const plants = new Map<string, Drawn>();
  for (const { plant, mark, scores } of pack.plants) {
    const stands = mark !== null && !undone.has(mark.id) ? mark : null;
    plants.set(plant.id, {
      plant,
      mark: stands && { id: stands.id, intent: stands.intent, words: stands.words },
      tag: stands?.tag ?? null,
      fate: stands?.fate ?? null,
      scores: Object.fromEntries(
        scores.filter((each) => !undone.has(each.id)).map(({ id, trait, value, text }) => [trait, { id, value, text }]),
      ),
      photos: 0,
      touched: 0,
    });
  }
  const firsts = new Map(pack.traits.map((trait) => [trait.id, trait.first]));
  for (const { record, sequence, ...row } of standing) {
    const plant = "plant" in record.body ? record.body.plant : null;
    if (plant === null) continue;
    const drawn = plants.get(plant.id) ?? { ...unseen, plant, scores: {} };
    plants.set(plant.id, drawn);
    drawn.touched = sequence;
    // what the pack has already is drawn only where taking back something later has laid it bare again
    const known = isInPack({ record, sequence, ...row }, pack);
    if (!known) drawn.plant = plant;
    if (record.kind === "mark" && (!known || drawn.mark === null)) {
      drawn.mark = { id: record.id, intent: record.body.intent, words: record.body.words };
      drawn.tag = record.body.tag;
      drawn.fate = record.body.fate;
    }
    if (record.kind === "score") {
      const trait = firsts.get(record.body.traitId) ?? record.body.traitId;
      const { value, text } = record.body;
      if (!known || !drawn.scores[trait]) drawn.scores[trait] = { id: record.id, value, text };
    }
    if (record.kind === "photo") drawn.photos += 1;
    if (record.kind === "taken") drawn.fate = fateOfPlant(record.body.fate) ?? drawn.fate;
  }
  return [...plants.values()]
    .filter((each) => each.mark !== null || each.photos > 0 || Object.keys(each.scores).length > 0)
    .sort((a, b) => b.touched - a.touched || byTag(a, b));
}

function fateOfPlant(seed: FieldBody<"taken">["fate"]): string | null {
  if (seed === "not taken") return null;
  return seed === "kept" ? "harvested" : "lost";
}

const unseen = { mark: null, tag: null, fate: null, photos: 0, touched: 0 };

function byTag(a: Drawn, b: Drawn): number {
  return (a.tag ?? a.plant.name).localeCompare(b.tag ?? b.plant.name, "en", { numeric: true });
}

/** The last harvest that was begun and not said to be done. What was told of a plant last holds. */
function harvestUnderWay(standing: readonly KeptRecord[]): FieldState["harvest"] {
  const done = new Set(of("harvest", standing).map(({ body }) => body.harvestId));
  const open = of("taken", standing).filter(({ body }) => !done.has(body.harvestId));
  const harvestId = open.at(-1)?.body.harvestId;
  if (harvestId === undefined) return null;
  const taken = new Map<string, TakenShown>();
  for (const { id, body } of open) {
    if (body.harvestId !== harvestId) continue;
    const { plant, fate, grams, seeds } = body;
    taken.set(plant.id, { record: id, plant, fate, grams, seeds });
  }
  return { harvestId, taken: [...taken.values()] };
}

/** What of the phone is not in the registry: how many records, since when by the phone's clock, and how many it would not have. */
export function waitingOf(rows: readonly KeptRecord[]): { unsent: number; since: string | null; refused: number } {
  const unsent = rows.filter((row) => row.state === "unsent");
  const times = unsent.map((row) => row.record.recordedAt).sort();
  return {
    unsent: unsent.length,
    since: times[0] ?? null,
    refused: rows.filter((row) => row.state === "refused" && !row.putAway).length,
  };
}

import type {
  ChoiceGround,
  PlantToChoose,
  ScoreToCompare,
  TraitToWeigh,
  WantedParents,
} from "@/lib/schemas/plants/choice-ground";
import { goneByMark } from "@/lib/schemas/plants/gone-by-mark";
import { differenceOf } from "@/lib/schemas/traits/difference-of";
import { scoreText } from "@/lib/schemas/traits/read-score";
import { betterEnd, scoreNumber } from "@/lib/schemas/traits/score-number";
import type { PlotToChooseIn } from "@/lib/science/effective-size/size-of-cut";
import type { Assumption } from "@/lib/science/outcome";
import { grouped } from "../change-set/grouped";
import { plotParentsOfRecord } from "../figures/plot-parents-of-record";
import { markShown, type PlantOfGrowOut, type StandingScore } from "../grow-outs/plants-of-grow-out";
import type { FieldRead } from "../grow-outs/read-field";
import type { GrowOutRead } from "../grow-outs/read-grow-out";
import { sizeSoFar } from "../grow-outs/size-so-far";
import { type LotToSow, proposedSowing } from "../grow-outs/sowing-plan";
import type { HeritabilityFound } from "../traits/heritability-found";
import type { TraitLine } from "../traits/list-traits";
import { plantCellText } from "./cells-of-plant";

/** Where a plant stands, and whether a person said that it is the same as another. */
export interface PlaceOfPlant {
  readonly id: string;
  readonly row: string | null;
  readonly position: number | null;
  readonly sameAsId: string | null;
}

/** What stayed of a choice, by trait. */
export type Heritabilities = ReadonlyMap<string, HeritabilityFound>;

/** Makes the ground of a choice from what was read: plants that are one are one, what cannot be compared is left out of the scores. */
export function choiceGround(
  read: GrowOutRead,
  field: Pick<FieldRead, "size">,
  {
    places,
    lots,
    heritability,
  }: {
    readonly places: readonly PlaceOfPlant[];
    readonly lots: readonly LotToSow[];
    readonly heritability: Heritabilities;
  },
): ChoiceGround {
  const { growOut, variety } = read;
  const traits = read.traits.map((line) => traitToWeigh(line, variety.id, read.plants, heritability));
  const plants = plantsToChoose(read, new Map(places.map((place) => [place.id, place])));
  const scorers = new Set(
    plants.flatMap(({ scores }) => Object.values(scores).flatMap((own) => own.map(({ by }) => by))),
  );
  const standing = plants.filter(({ gone }) => gone === null).length;
  const { plot, assumed } = plotToChooseIn(field, standing);
  return {
    growOut: { id: growOut.id, name: growOut.name },
    plants,
    traits,
    people: [...scorers].map((id) => ({ id, name: id === null ? "somebody" : (read.people.get(id) ?? "a steward") })),
    plot,
    assumed,
    floor: variety.crop.plantsMin,
    wanted: wantedParents(growOut.seedParentsPlanned, variety.seedParentsWanted),
    seeds: seedsOfSowing(read, lots),
    chosenBeforeFlower: variety.crop.lifeCycle === "biennial",
  };
}

/** A trait as it is weighed. */
export function traitToWeigh(
  line: TraitLine,
  varietyId: string,
  plants: readonly PlantOfGrowOut[],
  heritability: Heritabilities,
): TraitToWeigh {
  const { newest } = line;
  const older = plants.filter(({ scores }) => (scores.get(line.id) ?? []).some((score) => score.traitId !== newest.id));
  return {
    key: line.id,
    name: newest.name,
    ...differenceOf(newest),
    definition: newest,
    better: betterEnd(newest),
    days: newest.kind === "date",
    href: `/varieties/${varietyId}/traits/${newest.id}`,
    olderVersion: older.length,
    heritability: heritability.get(line.id) ?? null,
  };
}

/** Records that a person said are one plant are read as one: the leading one, with the scores of both. */
function plantsToChoose({ plants, traits }: GrowOutRead, places: ReadonlyMap<string, PlaceOfPlant>): PlantToChoose[] {
  const others = grouped(plants, ({ id }) => places.get(id)?.sameAsId ?? null);
  return plants
    .filter(({ id }) => (places.get(id)?.sameAsId ?? null) === null)
    .map((plant): PlantToChoose => {
      const same = [plant, ...(others.get(plant.id) ?? [])];
      const mark = markShown(plant);
      const ofTrait = traits.map((line) => [line, same.flatMap(({ scores }) => scores.get(line.id) ?? [])] as const);
      const place = same.map(({ id }) => places.get(id)).find((each) => each?.row != null || each?.position != null);
      return {
        id: plant.id,
        name: plant.name,
        tag: plantCellText("tag", plant, mark),
        cell: same.find(({ cell }) => cell !== null)?.cell ?? null,
        row: place?.row ?? null,
        position: place?.position ?? null,
        intent: mark?.intent ?? "",
        words: mark?.words ?? "",
        gone: goneOf(same),
        scores: Object.fromEntries(
          ofTrait.flatMap(([line, scores]) => {
            const comparable = toCompare(line, scores);
            return comparable.length === 0 ? [] : [[line.id, comparable]];
          }),
        ),
        said: Object.fromEntries(
          ofTrait.flatMap(([line, scores]) =>
            scores.length === 0 ? [] : [[line.id, scores.map(scoreText).join(" / ")]],
          ),
        ),
      };
    });
}

/** Why seed cannot be kept of a plant by what was last marked of each of its records; a fate before an intent. */
function goneOf(same: readonly PlantOfGrowOut[]): string | null {
  const marks = same.flatMap(({ marks: own }) => own.at(-1) ?? []);
  const fates = marks.map(({ fate }) => goneByMark({ intent: "", fate }));
  return fates.find((why) => why !== null) ?? marks.map(goneByMark).find((why) => why !== null) ?? null;
}

/** Scores by the newest version, the last of each person. */
function toCompare({ newest }: TraitLine, scores: readonly StandingScore[]): ScoreToCompare[] {
  const byPerson = new Map<string | null, number>();
  for (const score of scores) {
    const value = score.traitId === newest.id ? scoreNumber(newest, score) : null;
    if (value !== null) byPerson.set(score.stewardId, value);
  }
  return [...byPerson].map(([by, value]) => ({ by, value }));
}

/** The plot without its seed parents, as if no seed were taken; where nobody counted it, the plants on record stand in it at least. */
function plotToChooseIn({ size }: Pick<FieldRead, "size">, standing: number) {
  const record = { ...size.record, seedParents: null, seedShares: null, seedParentsDetasselled: null };
  const before = sizeSoFar({ ...size, record, over: false, seedTaken: false });
  if (before.state === "clonal") return { plot: null, assumed: [] };
  const said = (texts: readonly Assumption[]) =>
    texts.map(({ text }) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`);
  if (before.state !== "before-seed") {
    const { mating, assumed } = plotParentsOfRecord({ ...record, parents: [] }, size.profile);
    const uncounted = "the plants were not counted: those on record are the fewest that shed pollen";
    const plot: PlotToChooseIn = {
      ...mating,
      pollenParents: { low: Math.max(1, standing), high: null },
      inbreeding: size.inbreeding ?? 0,
    };
    return { plot, assumed: said([...assumed, { code: "not-counted", text: uncounted }]) };
  }
  const { seedParents: _seed, seedShares: _shares, ...plot } = before.input;
  const { low, high } = plot.pollenParents;
  const least = plot.sexes === "separate" || low === high ? low : Math.min(Math.max(low, standing), high ?? Infinity);
  return {
    plot: { ...plot, pollenParents: { low: least, high } },
    assumed: said(before.assumed),
  };
}

function wantedParents(planned: number | null, variety: number | null): WantedParents | null {
  if (planned !== null) return { count: planned, from: "plan" };
  return variety === null ? null : { count: variety, from: "variety" };
}

/** Seeds of one next sowing of the plants that are wanted, as the lot that was sown here came up in its last test; of several the hungriest. */
function seedsOfSowing({ variety, parents }: GrowOutRead, lots: readonly LotToSow[]): ChoiceGround["seeds"] {
  const plants = variety.plantsWanted ?? variety.crop.plantsMin;
  if (plants === null) return null;
  const sown = new Set(parents.map(({ id }) => id));
  const counts = lots
    .filter(({ id }) => sown.has(id))
    .flatMap((lot) => {
      const count = proposedSowing(lot, plants).sowing?.seeds;
      return count === undefined ? [] : [{ count, from: lot.number }];
    });
  return counts.reduce<ChoiceGround["seeds"]>((most, each) => (most && most.count >= each.count ? most : each), null);
}

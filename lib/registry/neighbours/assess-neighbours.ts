import { type CrossingPair, crossingPairs } from "@/lib/science/crops/crossing-pairs";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { type Bearing, bearings } from "@/lib/science/isolation/bearings";
import { type CrossingOfPair, crossingOfPair } from "@/lib/science/isolation/crossing-of-pair";
import {
  type IsolationDistances,
  type IsolationPurpose,
  isolationDistances,
} from "@/lib/science/isolation/distance-rule";
import { type WindowOverlap, windowDays, windowOverlap } from "@/lib/science/isolation/flowering-window";
import { type GradeOfLot, isolationGrade } from "@/lib/science/isolation/isolation-grade";
import { neighbourVerdict, type VerdictOnNeighbour } from "@/lib/science/isolation/neighbour-verdict";
import { type ShareOfNeighbours, shareOfNeighbours } from "@/lib/science/isolation/share-of-neighbours";
import { type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { NeighbourRow, NeighboursRead } from "./read-neighbours";
import { curveOfWindow, type KnownWindow, windowOfNeighbour, windowOfNotes } from "./windows";

/** A neighbour source with the verdict of the rule and what it was taken from. */
export interface AssessedNeighbour extends VerdictOnNeighbour {
  readonly neighbour: NeighbourRow;
  readonly bearing: Bearing | null;
  readonly crossing: CrossingOfPair | null;
  readonly window: KnownWindow | null;
  /** days of its pollen with our stigmas; null where either is unknown */
  readonly overlap: WindowOverlap | null;
  readonly sizeRatio: number | null;
}

/** The neighbourhood of a grow-out as the rule sees it. */
export interface Assessment {
  readonly purpose: IsolationPurpose;
  readonly distances: IsolationDistances | null;
  readonly plotM2: number | null;
  readonly stigma: KnownWindow | null;
  readonly ownPollen: KnownWindow | null;
  /** days on which our stigmas were receptive */
  readonly receptive: WindowOverlap | null;
  readonly neighbours: readonly AssessedNeighbour[];
  readonly grade: GradeOfLot;
  /** the nearest source that crosses and is not of the variety itself; null: none with a distance */
  readonly nearest: AssessedNeighbour | null;
  /** the share of foreign pollen, where a model stands for it; refused with what is missing */
  readonly share: Outcome<ShareOfNeighbours>;
  /** kin and types that the list names in words only: something to look for */
  readonly kin: readonly CrossingPair[];
}

/** Judges each neighbour of a grow-out by the distance rule, and the lots harvested from it by their worst neighbour. */
export function assessNeighbours(
  read: NeighboursRead,
  { purpose, hemisphere }: { readonly purpose: IsolationPurpose; readonly hemisphere: Hemisphere },
): Assessment {
  const { ground, notes, plots } = read;
  const distances = isolationDistances(ground, purpose, ground.isolationWantedM);
  const plotM2 = plots.at(-1)?.areaM2 ?? null;
  const own = notes.filter((note) => note.neighbourId === null);
  const stigma = windowOfNotes(own, "silk");
  const ownCrop = { key: ground.cropKey, crossingGroup: ground.crossingGroup, latinName: ground.latinName };
  const neighbours = read.neighbours.map((neighbour): AssessedNeighbour => {
    const { cropKey, crossingGroup, latinName, sizeM2, plants } = neighbour;
    const crossing = cropKey === null ? null : crossingOfPair(ownCrop, { key: cropKey, crossingGroup, latinName });
    const noted = windowOfNotes(
      notes.filter((note) => note.neighbourId === neighbour.id),
      "pollen",
    );
    const window = windowOfNeighbour(neighbour, noted, hemisphere);
    const overlap = window && stigma ? windowOverlap(window, stigma) : null;
    const sizeRatio = ratio(sizeM2, plotM2) ?? ratio(plants, ground.plantsStanding);
    const verdict = neighbourVerdict({
      sameVariety: neighbour.varietyId === ground.varietyId,
      clonal: ground.clonal,
      crossing,
      distances,
      distanceMetres: neighbour.distanceMetres,
      overlap,
      apartAsSeen: noted !== null && stigma !== null && windowOverlap(noted, stigma).most === 0,
      sizeRatio,
    });
    const bearing = bearings.find((each) => each === neighbour.bearing) ?? null;
    return { neighbour, bearing, crossing, window, overlap, sizeRatio, ...verdict };
  });
  const looked = ground.neighboursLookedOn !== null;
  const verdicts = neighbours.map((each) => each.verdict);
  return {
    purpose,
    distances,
    plotM2,
    stigma,
    ownPollen: windowOfNotes(own, "pollen"),
    receptive: stigma ? windowDays(stigma) : null,
    neighbours,
    grade: isolationGrade({ clonal: ground.clonal, looked, verdicts, methods: read.methods }),
    nearest: nearestOf(neighbours),
    share: shareOf(read, neighbours, { looked, plotM2, stigma }),
    kin: crossingPairs().filter(
      (pair) => pair.group === ground.crossingGroup && pair.cropKeysA.length === 0 && pair.degree !== "none",
    ),
  };
}

/** Whether a source sends pollen that counts: it crosses, and is not of the variety itself. */
export function sendsForeignPollen({ crossing, verdict }: AssessedNeighbour): boolean {
  return verdict !== "same-variety" && (crossing?.degree === "full" || crossing?.degree === "partial");
}

function nearestOf(neighbours: readonly AssessedNeighbour[]): AssessedNeighbour | null {
  const far = ({ neighbour }: AssessedNeighbour) => neighbour.distanceMetres ?? Number.POSITIVE_INFINITY;
  return neighbours
    .filter((each) => sendsForeignPollen(each) && each.neighbour.distanceMetres !== null)
    .reduce<AssessedNeighbour | null>((near, each) => (near === null || far(each) < far(near) ? each : near), null);
}

function shareOf(
  { ground, ownInTables }: NeighboursRead,
  neighbours: readonly AssessedNeighbour[],
  known: { readonly looked: boolean; readonly plotM2: number | null; readonly stigma: KnownWindow | null },
): Outcome<ShareOfNeighbours> {
  const none = (code: string, wrong: string, needed: string) =>
    refused<ShareOfNeighbours>({ ...refusal(code, [], null, wrong, needed), sentence: `${wrong}; ${needed}` });
  if (!known.looked) return none("nobody-looked", "nobody looked for neighbours", "the day of a look");
  if (neighbours.some(({ crossing }) => crossing === null || crossing.degree === "unknown"))
    return none("not-assessed", "a source could not be judged", "its crop");
  return shareOfNeighbours({
    cropKey: ground.cropKey,
    own: ownInTables,
    plotM2: known.plotM2,
    plants: ground.plantsStanding,
    stigma: curveOfWindow(known.stigma),
    sources: neighbours
      .filter(({ crossing, verdict }) => verdict !== "same-variety" && (crossing?.factor ?? 0) > 0)
      .map(({ neighbour, crossing, window }) => ({
        id: neighbour.id,
        distanceMetres: neighbour.distanceMetres,
        sizeM2: neighbour.sizeM2,
        plants: neighbour.plants,
        factor: crossing?.factor ?? 0,
        pollen: curveOfWindow(window),
      })),
  });
}

function ratio(theirs: number | null, ours: number | null): number | null {
  return theirs === null || ours === null || ours === 0 ? null : theirs / ours;
}

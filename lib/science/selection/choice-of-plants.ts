import { compareCodePoints } from "@/lib/science/code-point-order";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { choosePlants, type RankedPlant } from "./choose-plants";
import { cutOfRanking, SAME_INDEX } from "./cut-of-ranking";
import { type DifferentialWithinCells, differentialWithinCells } from "./differential-within-cells";
import type { ScoredPlant, WeightedTrait } from "./scored-plant";

export interface ChoiceQuestion {
  readonly plants: readonly ScoredPlant[];
  readonly traits: readonly WeightedTrait[];
  readonly keep: number;
  readonly withinCells: boolean;
  /** pulled, lost or left out by hand: their scores still tell what their cell is like, and they are never in */
  readonly barred: ReadonlySet<string>;
  /** put in by hand, whatever their rank */
  readonly taken: ReadonlySet<string>;
}

/** How a plant stands to the cut. */
export type Standing = "kept" | "tied" | "left" | "barred" | "not-compared";

export interface StandingPlant extends RankedPlant {
  readonly standing: Standing;
}

export interface ChoiceOfPlants {
  /** the best first, then those that nothing could be compared with */
  readonly ranked: readonly StandingPlant[];
  /** by code points */
  readonly kept: readonly string[];
  readonly tied: readonly string[];
  readonly placesLeft: number;
  /** plants that can be in by their rank */
  readonly rankable: number;
  /** mean index of the kept; null where none was compared */
  readonly gain: number | null;
  /** mean index of the best 1, 2, 3 ... that can be in */
  readonly gains: readonly number[];
  /** by trait, in its own unit, soil left out */
  readonly differential: ReadonlyMap<string, DifferentialWithinCells | null>;
}

/**
 * A choice among scored plants as it is made by hand and rank together: choosePlants ranks all, some are barred, some are put in, and the cut falls among the
 * others. A plant of which nothing was compared with another has no rank here and gets in by hand alone.
 *
 *     gain(k) = mean index of the k best that are not barred (equals at the cut count alike, whichever is taken)
 *
 * Refused: what choosePlants refuses. Source: as choosePlants.
 */
export function choiceOfPlants(question: ChoiceQuestion): Outcome<ChoiceOfPlants> {
  const { plants, traits, keep, withinCells, barred, taken } = question;
  const chosen = choosePlants({ plants, traits, keep: Math.min(Math.max(1, keep), plants.length), withinCells });
  if (!chosen.ok) return chosen;
  const comparable = chosen.value.ranked.filter(({ index, weightCompared }) => index !== null && weightCompared > 0);
  const open = comparable.filter(({ id }) => !barred.has(id));
  const byHand = plants.filter(({ id }) => taken.has(id) && !barred.has(id)).map(({ id }) => id);
  const cut = cutOfRanking(
    open.filter(({ id }) => !taken.has(id)),
    keep - byHand.length,
  );
  const kept = [...cut.kept, ...byHand].sort(compareCodePoints);
  const keptSet = new Set(kept);
  const tied = new Set(cut.tied);
  const compared = new Set(comparable.map(({ id }) => id));
  const standingOf = (id: string): Standing => {
    if (keptSet.has(id)) return "kept";
    if (barred.has(id)) return "barred";
    if (!compared.has(id)) return "not-compared";
    return tied.has(id) ? "tied" : "left";
  };
  const rest = chosen.value.ranked.filter(({ id }) => !compared.has(id));
  return accepted({
    ranked: [
      ...ranksAmong(comparable),
      ...[...rest].sort((a, b) => compareCodePoints(a.id, b.id)).map((plant) => ({ ...plant, rank: null })),
    ].map((plant) => ({ ...plant, standing: standingOf(plant.id) })),
    kept,
    tied: cut.tied,
    placesLeft: cut.placesLeft,
    rankable: open.length,
    gain: meanOf(comparable.flatMap(({ id, index }) => (keptSet.has(id) && index !== null ? [index] : []))),
    gains: runningMeans(open.map(({ index }) => index ?? 0)),
    differential: new Map(
      traits.map(({ key }) => [key, differentialWithinCells(plants, key, keptSet, withinCells)] as const),
    ),
  });
}

/** Ranks 1, 2, 2, 4 among those that were compared, in their order. */
function ranksAmong(plants: readonly RankedPlant[]): RankedPlant[] {
  let head = 0;
  return plants.map((plant, place) => {
    if ((plants[head]?.index ?? 0) - (plant.index ?? 0) > SAME_INDEX) head = place;
    return { ...plant, rank: head + 1 };
  });
}

function runningMeans(values: readonly number[]): number[] {
  let sum = 0;
  return values.map((value, place) => {
    sum += value;
    return sum / (place + 1);
  });
}

function meanOf(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
}

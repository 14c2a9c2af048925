import { compareCodePoints } from "@/lib/science/code-point-order";
import { countFault, type Fault, faultsAmong } from "@/lib/science/limits";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { comparedWithNeighbours } from "./compared-with-neighbours";
import { cutOfRanking, SAME_INDEX } from "./cut-of-ranking";
import { type ScoredPlant, scoreOf, type WeightedTrait } from "./scored-plant";

export interface PlantsToChoose {
  readonly plants: readonly ScoredPlant[];
  readonly traits: readonly WeightedTrait[];
  /** how many are to be kept */
  readonly keep: number;
  /** compare with neighbours in the same cell; false: the whole field is one cell */
  readonly withinCells?: boolean;
}

export interface RankedPlant {
  readonly id: string;
  /** weighted mean of the standardised deviations; null where nothing was scored */
  readonly index: number | null;
  /** 1 is the best; equals share a rank; null without an index */
  readonly rank: number | null;
  /** share of the weight that was really compared */
  readonly weightCompared: number;
}

export interface ChosenPlants {
  /** the best first, those without an index last */
  readonly ranked: readonly RankedPlant[];
  /** surely in, by code points */
  readonly kept: readonly string[];
  /** they share the cut and are more than the places left, by code points */
  readonly tied: readonly string[];
  readonly placesLeft: number;
  readonly proportion: number;
  /** by trait: mean of the kept less mean of all scored, in the trait's unit; null where none was scored */
  readonly differential: Readonly<Record<string, number | null>>;
  readonly assumed: readonly Assumption[];
}

/**
 * Ranks marked plants, each compared with its neighbours, and says which are surely among the best.
 *
 *     v = x | −x | −|x − target|;  d = v − mean of the cell;  s = √(Σ d²/(plants − cells));  z = d/s, 0 at s = 0
 *     index = Σ weight·z / Σ weight
 *
 * A cell is compared where two or more of its plants have the trait. Without a comparison z counts as 0, and `weightCompared` tells it.
 * Those within 1e-9 of the index at the cut share it; where they are more than the places left, a person chooses among them: nothing is
 * decided by the order of the rows. Refused: ids or traits twice, weights below 0 or all 0, keep outside 1 to the plants.
 * Source: Gardner 1961, Crop Sci. 1:241-245 (selection within cells); weighted standardised deviations.
 */
export function choosePlants(given: PlantsToChoose): Outcome<ChosenPlants> {
  const faults = choosingFaults(given);
  if (faults.length > 0) return refused(...faults);
  const { plants, traits, keep, withinCells = true } = given;
  const compared = traits.map((trait) => comparedWithNeighbours(plants, trait, withinCells));
  const weights = traits.reduce((sum, { weight }) => sum + weight, 0);
  const scored = plants.map((plant, place): RankedPlant => {
    const has = traits.some(({ key }) => scoreOf(plant, key) !== null);
    const over = (of: (z: number) => number) =>
      traits.reduce((sum, { weight }, at) => {
        const z = compared[at]?.[place] ?? null;
        return z === null ? sum : sum + weight * of(z);
      }, 0) / weights;
    return { id: plant.id, index: has ? over((z) => z) : null, rank: null, weightCompared: over(() => 1) };
  });
  const ranked = withRanks(scored);
  const { kept, tied, placesLeft } = cutOfRanking(ranked, keep);
  const rankable = ranked.filter(({ index }) => index !== null).length;
  return accepted({
    ranked,
    kept,
    tied,
    placesLeft,
    proportion: Math.min(keep, rankable) / plants.length,
    differential: Object.fromEntries(traits.map(({ key }) => [key, differentialOf(plants, new Set(kept), key)])),
    assumed: [],
  });
}

function withRanks(plants: readonly RankedPlant[]): RankedPlant[] {
  const order = [...plants].sort(
    (a, b) => (b.index ?? -Infinity) - (a.index ?? -Infinity) || compareCodePoints(a.id, b.id),
  );
  let head = 0;
  const ranked = order.map((plant, place): RankedPlant => {
    const first = order[head]?.index ?? null;
    if (plant.index === null) return plant;
    if (first === null || first - plant.index > SAME_INDEX) head = place;
    return { ...plant, rank: head + 1 };
  });
  return ranked.sort((a, b) => (a.rank ?? Infinity) - (b.rank ?? Infinity) || compareCodePoints(a.id, b.id));
}

function differentialOf(plants: readonly ScoredPlant[], kept: ReadonlySet<string>, key: string): number | null {
  const all = plants.flatMap((plant) => scoreOf(plant, key) ?? []);
  const ofKept = plants.flatMap((plant) => (kept.has(plant.id) ? (scoreOf(plant, key) ?? []) : []));
  return all.length === 0 || ofKept.length === 0 ? null : mean(ofKept) - mean(all);
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function choosingFaults({ plants, traits, keep }: PlantsToChoose): Refusal[] {
  const faults: Refusal[] = [
    ...twice(
      plants.map(({ id }) => id),
      "plants",
      "id",
    ),
    ...twice(
      traits.map(({ key }) => key),
      "traits",
      "key",
    ),
    ...traits.flatMap(({ weight, better }, place) => faultsAmong(...traitFaults(weight, better, place))),
  ];
  if (plants.length === 0)
    faults.push(refusal("no-plants", ["plants"], plants, "names no plant", "give the marked plants"));
  if (traits.length === 0)
    faults.push(refusal("no-traits", ["traits"], traits, "names no trait", "give one trait or more"));
  else if (traits.every(({ weight }) => weight === 0)) {
    faults.push(
      refusal("no-weight", ["traits"], 0, "is the weight of every trait", "give one of them a weight above 0"),
    );
  }
  return [...faults, ...keepFaults(keep, plants.length)];
}

function traitFaults(weight: number, better: WeightedTrait["better"], place: number): Fault[] {
  const sound = Number.isFinite(weight) && weight >= 0;
  const target = typeof better === "object" && !Number.isFinite(better.target);
  return [
    sound
      ? undefined
      : refusal("weight", ["traits", place, "weight"], weight, "is no weight", "a number of 0 or more is needed"),
    target
      ? refusal("target", ["traits", place, "better", "target"], better.target, "is no target", "a number is needed")
      : undefined,
  ];
}

function keepFaults(keep: number, plants: number): Refusal[] {
  const faults = faultsAmong(countFault([], "keep", keep, 1));
  if (faults.length > 0 || keep <= plants || plants === 0) return faults;
  return [
    refusal("keep-too-many", ["keep"], keep, `is more than the ${plants} plants`, "keep at most as many as there are"),
  ];
}

function twice(names: readonly string[], list: string, key: string): Refusal[] {
  const seen = new Set<string>();
  return names.flatMap((name, place) => {
    const again = seen.has(name);
    seen.add(name);
    return again ? [refusal("twice", [list, place, key], name, "stands twice", "each is given once")] : [];
  });
}

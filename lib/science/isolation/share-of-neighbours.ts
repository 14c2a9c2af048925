import { accepted, type Outcome, type Path, refusal, refused } from "../outcome";
import type { OwnInTable } from "../tables/own-in-table";
import type { FloweringCurve } from "./flowering-curve";
import { type PollenModel, pollenModelOf } from "./pollen-models";
import { type PollenRisk, type PollenRiskInput, pollenRisk } from "./pollen-risk";
import { centreAtGap } from "./squares-apart";
import { synchronyRatio } from "./synchrony-ratio";

/** A neighbour source that crosses, as far as it is known. */
export interface CrossingSource {
  readonly id: string;
  readonly distanceMetres: number | null;
  readonly sizeM2: number | null;
  readonly plants: number | null;
  /** 0..1 */
  readonly factor: number;
  /** null where its flowering was not noted to the day: taken to be fully in time */
  readonly pollen: FloweringCurve | null;
}

export interface NeighbourhoodOfPlot {
  readonly cropKey: string;
  readonly plotM2: number | null;
  readonly plants: number | null;
  readonly stigma: FloweringCurve | null;
  readonly sources: readonly CrossingSource[];
  /** the steward's own numbers in the place of the model's; left out: as published */
  readonly own?: readonly OwnInTable[];
}

export interface ShareOfNeighbours {
  readonly model: PollenModel;
  readonly input: PollenRiskInput;
  readonly risk: PollenRisk;
  /** ids of sources that lie where the model was not measured */
  readonly beyondData: readonly string[];
  /** ids of sources that were taken to be fully in time */
  readonly takenInTime: readonly string[];
}

// The kernel is the same in every direction: each source is set face to face with the plot, the nearer way for the same gap.
const facing = "E";
// A curve followed further than this beyond its measured points says nothing any more.
const farthestBeyond = 3;

/**
 * The share of foreign pollen of a grow-out from the neighbours on record, where a kernel or a measured curve stands for its crop:
 * squares of the areas written, face to face at their distances. Refused, with what would be needed, where no model stands, where there is no source,
 * where a distance or size is missing, or where a source lies more than three times beyond what a curve was measured for.
 * The distance rule decides in any case.
 */
export function shareOfNeighbours(place: NeighbourhoodOfPlot): Outcome<ShareOfNeighbours> {
  const model = pollenModelOf(place.cropKey, place.own);
  if (model === null) return missing("no-model", [], "no curve was measured for this crop", "the distance rule alone");
  if (place.sources.length === 0) return missing("no-sources", [], "no source is on record", "the distance rule alone");
  const outcome = model.form === "plane" ? planeOf(place, model) : oddsOf(place, model);
  if (!outcome.ok) return outcome;
  const risk = pollenRisk(outcome.value);
  if (!risk.ok) return risk;
  const outside = (metres: number) =>
    metres > model.beyondMetres || (model.form === "odds" && metres < model.fromMetres);
  return accepted({
    model,
    input: outcome.value,
    risk: risk.value,
    beyondData: place.sources.filter((each) => outside(each.distanceMetres ?? 0)).map(({ id }) => id),
    takenInTime: place.sources.filter(({ pollen }) => pollen === null || place.stigma === null).map(({ id }) => id),
  });
}

function planeOf(place: NeighbourhoodOfPlot, { kernel }: PollenModel & { form: "plane" }): Outcome<PollenRiskInput> {
  const { plotM2 } = place;
  if (plotM2 === null || plotM2 === 0)
    return missing("plot-size", ["plot"], "no area of the plot is written", "its area in m²");
  const own = Math.sqrt(plotM2);
  const sources = [];
  for (const [index, source] of place.sources.entries()) {
    const { distanceMetres, sizeM2 } = source;
    if (distanceMetres === null) return noDistance(index);
    if (sizeM2 === null || sizeM2 === 0) return noSize(index, "its area in m²");
    const side = Math.sqrt(sizeM2);
    const { east, north } = centreAtGap(own, side, distanceMetres, facing);
    const square = { x: east - side / 2, y: north - side / 2, width: side, height: side };
    sources.push({
      id: source.id,
      ...square,
      overlap: inTime(source, place),
      compatibility: source.factor,
      shedding: 1,
    });
  }
  const plot = { x: -own / 2, y: -own / 2, width: own, height: own };
  return accepted({ form: "plane", kernel, plot, sources, points: 5 });
}

function oddsOf(place: NeighbourhoodOfPlot, model: PollenModel & { form: "odds" }): Outcome<PollenRiskInput> {
  const byPlants = (place.plants ?? 0) > 0 && place.sources.every(({ plants }) => (plants ?? 0) > 0);
  const plotSize = byPlants ? place.plants : place.plotM2;
  if (plotSize === null || plotSize === 0)
    return missing("plot-size", ["plot"], "no size of the plot is written", "its area in m², or its plants");
  const sources = [];
  for (const [index, source] of place.sources.entries()) {
    const { id, distanceMetres, factor } = source;
    const size = byPlants ? source.plants : source.sizeM2;
    if (distanceMetres === null) return noDistance(index);
    if (size === null || size === 0) return noSize(index, byPlants ? "its plants" : "its area in m²");
    if (distanceMetres > farthestBeyond * model.beyondMetres) {
      const needed = `the curve was measured to ${model.beyondMetres} m: the distance rule alone`;
      return missing("beyond-data", ["sources", index, "distanceMetres"], "a source lies far beyond the curve", needed);
    }
    sources.push({ id, distanceMetres, size, overlap: inTime(source, place), compatibility: factor });
  }
  return accepted({ form: "odds", curve: model.curve, plotSize, sources });
}

function inTime({ pollen }: CrossingSource, { stigma }: NeighbourhoodOfPlot): number {
  return pollen === null || stigma === null ? 1 : synchronyRatio(pollen, stigma);
}

function noDistance(index: number): Outcome<never> {
  return missing("distance", ["sources", index], "a source has no distance", "its distance in metres");
}

function noSize(index: number, needed: string): Outcome<never> {
  return missing("size", ["sources", index], "a source has no size", needed);
}

function missing(code: string, path: Path, wrong: string, needed: string): Outcome<never> {
  return refused({ ...refusal(code, path, null, wrong, needed), sentence: `${wrong}; ${needed}` });
}

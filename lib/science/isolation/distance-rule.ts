import type { CropProfile } from "../crops/crop-profile";

/** Whose distances: a home grower's, or a steward's who keeps a variety for others. */
export type IsolationPurpose = "home" | "stewardship";

/** The distances of the rule, in metres: nearer than `min` is too close, `max` and beyond is ok. */
export interface IsolationDistances {
  readonly min: number;
  readonly max: number;
  /** the list with the steward's own values, or the distance wanted for this variety */
  readonly from: "crop" | "variety";
}

type Distances = Pick<
  CropProfile,
  "isolationHomeMinM" | "isolationHomeMaxM" | "isolationStewardMinM" | "isolationStewardMaxM"
>;

/**
 * The distances that a crop needs, by purpose; those of our own crop, the mother. A distance wanted for the variety is the outer one,
 * and the inner one too where it is shorter. Null where neither is known.
 */
export function isolationDistances(
  crop: Distances,
  purpose: IsolationPurpose,
  wantedMetres: number | null,
): IsolationDistances | null {
  const home = purpose === "home";
  const min = home ? crop.isolationHomeMinM : crop.isolationStewardMinM;
  const max = home ? crop.isolationHomeMaxM : crop.isolationStewardMaxM;
  if (wantedMetres !== null)
    return { min: Math.min(min ?? wantedMetres, wantedMetres), max: wantedMetres, from: "variety" };
  return min === null || max === null ? null : { min, max, from: "crop" };
}

/** The distance rule: below min too close, from min marginal, from max ok. The boundary counts for the better. Metres, edge to edge. */
export function distanceRule(metres: number, { min, max }: IsolationDistances): "ok" | "marginal" | "too-close" {
  return metres < min ? "too-close" : metres < max ? "marginal" : "ok";
}

import { normalised } from "@/lib/science/effective-size/normalised";
import { listed, type PlotParents } from "@/lib/science/effective-size/plot-parents";
import { pollenWithoutSelfing } from "@/lib/science/effective-size/pollen-without-selfing";

/** The plants of a harvest, with the part of their pollen that came from outside. */
export interface HarvestedPlants extends PlotParents {
  readonly foreignPollen?: number;
}

/**
 * κ_ij: the chance that a gene of a seed of one harvest and a gene of a seed of another harvest of the same plants come from one plant.
 *
 *     κ_ij = Σ c_i c_j over the plants      c = ½[(1 + s) q + u p]      u = (1 − s)(1 − m)      self-incompatible: p* of pollenWithoutSelfing for p
 *
 * Each harvest has its own seed shares q; pollen shares p, the selfing rate s and the foreign part m of the pollen belong to the plants. Lists
 * stand in the order of the plants: a plant that gave no seed to a harvest has share 0 there. Gives a square, one row a harvest; the diagonal
 * is what lineage takes for one harvest alone. Takes harvests that plantsFaults found sound.
 * Source: two lots from the same plants, Σ c c' of the contributions (Lindgren & Mullin 1998, Can. J. For. Res. 28:276-283, for one lot);
 * the same law of two draws from one plant, for draws of two lots.
 */
export function plantsInCommon(harvests: readonly HarvestedPlants[]): number[][] {
  const given = harvests.map(contributions);
  return given.map((one) => given.map((other) => one.reduce((sum, c, plant) => sum + c * (other[plant] ?? 0), 0)));
}

/** c, one number a plant; where the sexes are separate the females first, then the males. */
function contributions(plot: HarvestedPlants): number[] {
  const { seedParents, pollenParents, selfingRate: s = 0, foreignPollen: m = 0 } = plot;
  const separate = plot.sexes === "separate";
  const q = normalised(listed(plot.seedShares) ?? new Array<number>(seedParents).fill(1));
  const p = normalised(listed(plot.pollenShares) ?? new Array<number>(pollenParents).fill(1));
  const u = (1 - s) * (1 - m);
  if (separate) return [...q.map((share) => share / 2), ...p.map((share) => (u * share) / 2)];
  const ofAll = [...q, ...new Array<number>(pollenParents - seedParents).fill(0)];
  const fathers = plot.selfIncompatible === true ? pollenWithoutSelfing(ofAll, p) : p;
  return ofAll.map((share, plant) => ((1 + s) * share + u * (fathers[plant] ?? 0)) / 2);
}

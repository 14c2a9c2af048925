import { normalised } from "@/lib/science/effective-size/normalised";
import { cvOf, listed, type Shares } from "@/lib/science/effective-size/plot-parents";
import { pollenWithoutSelfing } from "@/lib/science/effective-size/pollen-without-selfing";
import type { GrowOutLot } from "@/lib/science/lineage/lots";
import { drawnFrom, type Gene, type NewGene, type SeedPool } from "./seed-pool";
import { runningTotals, type SeededDraws } from "./seeded-draws";

type Plant = readonly [Gene, Gene];
type Plot = Omit<GrowOutLot, "kind" | "parents">;
type Parts = readonly { readonly pool: SeedPool; readonly share: number }[];

/** The plants of a grow-out, as they stand in the plot. */
export interface RaisedPlants {
  readonly pollen: readonly Plant[];
  readonly seed: readonly Plant[];
}

/** Grows a grow-out's plants from seed of its parent lots, each plant's lot drawn with its share; in a cross each side from its own lot. */
export function raisedPlants(plot: Plot, parents: Parts, draws: SeededDraws, seedSide: Parts = parents): RaisedPlants {
  const { pollenParents, seedParents } = plot;
  const pollen = Array.from({ length: pollenParents }, () => drawnFrom(parents, draws));
  if (plot.sexes !== "separate") return { pollen, seed: pollen.slice(0, seedParents) };
  return { pollen, seed: Array.from({ length: seedParents }, () => drawnFrom(seedSide, draws)) };
}

/**
 * The pool of seed that some plants set. What is known of the pool once the plants are known is taken as it is, not drawn again: that leaves
 * only the chance of the plants.
 */
export function grownPool(lot: Plot, { pollen, seed }: RaisedPlants, newGene: NewGene, draws: SeededDraws): SeedPool {
  const { pollenParents, seedParents, sexes = "hermaphrodite", selfingRate: s = 0, foreignPollen: m = 0 } = lot;
  const separate = sexes === "separate";
  const q = sharesOf(lot.seedShares, seedParents, draws);
  const p = sharesOf(lot.pollenShares, pollenParents, draws);
  const apart = lot.selfIncompatible === true && !separate;
  const fathers = apart ? pollenWithoutSelfing([...q, ...new Array(pollenParents - seedParents).fill(0)], p) : p;
  const out = (1 - s) * (1 - m);

  const genes = new Map<Gene, number>();
  for (const [i, plant] of seed.entries()) add(genes, plant, ((1 + s) * (q[i] ?? 0)) / 2);
  for (const [j, plant] of pollen.entries()) add(genes, plant, (out * (fathers[j] ?? 0)) / 2);

  const flying = new Map<Gene, number>();
  for (const [j, plant] of pollen.entries()) add(flying, plant, p[j] ?? 0);
  const inbreeding = seed.reduce((sum, plant, i) => {
    const own = plant[0] === plant[1] ? 1 : 0.5;
    const met = ((flying.get(plant[0]) ?? 0) + (flying.get(plant[1]) ?? 0)) / 2;
    const pi = p[i] ?? 0;
    const father = apart ? (met - pi * own) / (1 - pi) : met;
    return sum + (q[i] ?? 0) * (s * own + out * father);
  }, 0);

  const [mothers, sires] = [runningTotals(q), runningTotals(p)];
  const gamete = (plant: Plant | undefined): Gene => (plant ? plant[draws.chance(0.5) ? 0 : 1] : newGene());
  return {
    genes,
    inbreeding,
    draw: () => {
      const i = draws.among(mothers);
      const egg = gamete(seed[i]);
      if (draws.chance(s)) return [egg, gamete(seed[i])];
      if (draws.chance(m)) return [egg, newGene()];
      let j = draws.among(sires);
      while (apart && j === i) j = draws.among(sires);
      return [egg, gamete(pollen[j])];
    },
  };
}

function add(genes: Map<Gene, number>, [one, other]: Plant, mass: number): void {
  if (mass === 0) return;
  genes.set(one, (genes.get(one) ?? 0) + mass / 2);
  genes.set(other, (genes.get(other) ?? 0) + mass / 2);
}

/**
 * Shares one by one. Where only their coefficient of variation is known, one plant, drawn anew, gives (1 + cv·√(n − 1))/n and the others
 * alike: then Σ q² is (1 + cv²)/n, and it falls on no plant more than on another.
 */
function sharesOf(shares: Shares | undefined, n: number, draws: SeededDraws): number[] {
  const given = listed(shares);
  if (given) return normalised(given);
  const cv = cvOf(shares);
  if (cv === 0 || n === 1) return new Array<number>(n).fill(1 / n);
  const root = Math.sqrt(n - 1);
  const heavy = Math.floor(draws.next() * n);
  return Array.from({ length: n }, (_, i) => (i === heavy ? (1 + cv * root) / n : Math.max(0, 1 - cv / root) / n));
}

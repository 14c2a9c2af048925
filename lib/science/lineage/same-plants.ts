import type { GrowOutLot, LineageLot, ParentShare } from "@/lib/science/lineage/lots";
import { plantsInCommon } from "@/lib/science/lineage/plants-in-common";

/** The plants that several lots were harvested from, as the seed they grew of. */
export interface PlantsLot {
  readonly id: string;
  readonly kind: "plants";
  readonly parents: readonly ParentShare[];
}

/** A part of what chance did among those plants; nothing but harvests of them has a part in it. */
export interface DriftLot {
  readonly id: string;
  readonly kind: "drift";
  /** the plants */
  readonly parents: readonly ParentShare[];
  /** chance of one plant in common that is in it */
  readonly probability: number;
}

/** A harvest of those plants: all of their seed, and its weights in the parts of chance. */
export interface HarvestLot extends Omit<GrowOutLot, "kind" | "parents"> {
  readonly kind: "harvest";
  /** the plants first */
  readonly parents: readonly ParentShare[];
}

export type PedigreeLot = LineageLot | PlantsLot | DriftLot | HarvestLot;

/**
 * Lots of the same plants, so that their genes can be followed like any others: the square K of plantsInCommon is parted into independent
 * parts of chance, and each harvest has a weight in each.
 *
 *     K = L D L'          L: lower triangle with ones on the diagonal, D: a diagonal, none below 0
 *     Θ(O_i, O_j) = a² θ̄ + K_ij (S − θ̄) = a² θ̄ + Σ_k L_ik L_jk D_k (S − θ̄)
 *
 * The lots keep their places; the plants and the parts stand behind them. Takes lots that plantsFaults found sound. A lot alone with its
 * plants stays as it is. Source: the square-root-free factoring of a symmetric matrix, Golub & Van Loan, Matrix Computations, 4.1.
 */
export function withSamePlants(lots: readonly LineageLot[]): readonly PedigreeLot[] {
  const sets = new Map<string, GrowOutLot[]>();
  for (const lot of lots) {
    if (lot.kind !== "grow-out" || lot.plants === undefined) continue;
    const set = sets.get(lot.plants);
    if (set) set.push(lot);
    else sets.set(lot.plants, [lot]);
  }
  const replaced = new Map<string, HarvestLot>();
  const further: PedigreeLot[] = [];
  for (const [plants, set] of sets) {
    if (set.length < 2) continue;
    // No id that a person gave begins so.
    const id = `\u0000plants ${plants}`;
    further.push({ id, kind: "plants", parents: set[0]?.parents ?? [] });
    const { weights, parts } = factored(plantsInCommon(set));
    const driftId = (place: number) => `\u0000chance ${place} ${plants}`;
    parts.forEach((probability, place) => {
      further.push({ id: driftId(place), kind: "drift", parents: [{ id, share: 1 }], probability });
    });
    set.forEach((lot, place) => {
      const passing = passingOf(lot);
      const drift = (weights[place] ?? []).flatMap((weight, part) =>
        weight === 0 ? [] : [{ id: driftId(part), share: weight / passing }],
      );
      replaced.set(lot.id, { ...lot, kind: "harvest", parents: [{ id, share: 1 }, ...drift] });
    });
  }
  if (further.length === 0) return lots;
  return [...lots.map((lot) => replaced.get(lot.id) ?? lot), ...further];
}

/** a: the share of a harvest's genes that came from the lots sown; the rest is foreign pollen. */
export function passingOf({ selfingRate = 0, foreignPollen = 0 }: Pick<GrowOutLot, "selfingRate" | "foreignPollen">) {
  return 1 - ((1 - selfingRate) * foreignPollen) / 2;
}

/** L and D. A part that the harvests before it leave nothing of (one harvest is a mix of others) is none. */
function factored(square: readonly (readonly number[])[]): { weights: number[][]; parts: number[] } {
  const weights: number[][] = square.map((row) => row.map(() => 0));
  const parts: number[] = [];
  square.forEach((row, k) => {
    const left = (i: number) =>
      parts.reduce((sum, part, j) => sum - (weights[i]?.[j] ?? 0) * (weights[k]?.[j] ?? 0) * part, square[i]?.[k] ?? 0);
    const pivot = left(k);
    const none = pivot <= (row[k] ?? 0) * 1e-12;
    square.forEach((_, i) => {
      const own = weights[i];
      if (!own || i < k) return;
      own[k] = none ? 0 : i === k ? 1 : left(i) / pivot;
    });
    parts.push(none ? 0 : pivot);
  });
  return { weights, parts };
}

import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import { ancestryOf } from "@/lib/science/lineage/ancestry-of";
import { lineage } from "@/lib/science/lineage/lineage";
import type { GrowOutLot, LineageLot, LotLineage } from "@/lib/science/lineage/lots";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

/** A grow-out of the lineage with the plants that it might have had. */
export interface OtherSize {
  readonly id: string;
  readonly pollenParents: number;
  readonly seedParents: number;
  readonly seedShares?: PlotParents["seedShares"];
}

/** What one grow-out's size costs a lot of today. Shares 0 to 1; above 0 where more would be left. */
export interface CostOfSize {
  readonly id: string;
  /** the lot's diversity retained had this grow-out alone been of the other size */
  readonly diversityRetained: number;
  /** that, less what is retained as it was */
  readonly cost: number;
  /** the same of the variety's own genes; null where none are left to compare */
  readonly nativeCost: number | null;
}

export interface CostsOfSize {
  readonly today: LotLineage;
  readonly costs: readonly CostOfSize[];
}

/**
 * What each bottleneck cost: the change in a lot's diversity retained had that grow-out alone been of another size, all else as it was.
 *
 *     cost = (1 − θ of the lot with the other plants in that grow-out) − (1 − θ as it was)
 *
 * Costs of several grow-outs do not add up: each is told alone. Pollen is shared alike at the other size, and seed in all harvests of its plants. The lineage is followed anew for
 * each of them, over the lot's ancestry alone. Refused: what `lineage` refuses, a lot or grow-out that is not among the lots.
 * Example: 10 plants, seed of 4, then 20, then 8, seed of 5 (θ 0.15686); with seed of all 10 in the first θ is 0.14032: cost 0.0165.
 * Source: the recursion of `lineage`, once as it was and once otherwise.
 */
export function costsOfSize(
  lots: readonly LineageLot[],
  lot: string,
  others: readonly OtherSize[],
): Outcome<CostsOfSize> {
  const among = ancestryOf(lots, [lot]);
  const places = new Map(among.map(({ id }, place) => [id, place]));
  const faults = [lot, ...others.map(({ id }) => id)].flatMap((id, place): Refusal[] => {
    const found = among[places.get(id) ?? -1];
    if (place === 0 ? found : found?.kind === "grow-out") return [];
    const path = place === 0 ? ["lot"] : ["others", place - 1, "id"];
    const needed = place === 0 ? "name one of the lots" : "name a grow-out that the lot comes from";
    return [refusal("unknown-lot", path, id, "is not in this lineage", needed)];
  });
  if (faults.length > 0) return refused(...faults);
  const today = figuresOf(among, lot);
  if (!today.ok) return today;
  const costs: CostOfSize[] = [];
  for (const other of others) {
    const place = places.get(other.id) as number;
    const { plants } = among[place] as GrowOutLot;
    const otherwise = figuresOf(
      among.map((each, at) => {
        if (each.kind !== "grow-out") return each;
        const same = at === place || (plants !== undefined && each.plants === plants);
        return same ? withSize(each, other) : each;
      }),
      lot,
    );
    if (!otherwise.ok) return otherwise;
    const { diversityRetained, nativeDiversityRetained: native } = otherwise.value;
    const nativeToday = today.value.nativeDiversityRetained;
    costs.push({
      id: other.id,
      diversityRetained,
      cost: diversityRetained - today.value.diversityRetained,
      nativeCost: native === null || nativeToday === null ? null : native - nativeToday,
    });
  }
  return accepted({ today: today.value, costs });
}

function withSize(lot: GrowOutLot, { pollenParents, seedParents, seedShares = "equal" }: OtherSize): GrowOutLot {
  const { pollenShares: _ofOtherPlants, ...rest } = lot;
  return { ...rest, pollenParents, seedParents, seedShares };
}

function figuresOf(lots: readonly LineageLot[], id: string): Outcome<LotLineage> {
  const followed = lineage({ lots });
  if (!followed.ok) return followed;
  return accepted(followed.value.lots.find((each) => each.id === id) as LotLineage);
}

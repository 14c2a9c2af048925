import { plotParentsAssumed } from "@/lib/science/effective-size/plot-parents-assumed";
import { boundsOf } from "@/lib/science/lineage/drift-ends";
import { nothingBounds } from "@/lib/science/lineage/known-lot-faults";
import { assumedOfLot, eachOnce } from "@/lib/science/lineage/lineage-assumed";
import type { GrowOutAsKnown, LotAsKnown } from "@/lib/science/lineage/span-lots";
import type { Assumption } from "@/lib/science/outcome";

/** The defaults that move the spans of a lineage: each once, with the lots it was taken for. */
export function lineageSpanAssumed(lots: readonly LotAsKnown[]): Assumption[] {
  return eachOnce(lots.map((lot) => ({ id: lot.id, assumed: assumedOfSpan(lot) })));
}

/** What was taken for one lot's span. */
export function assumedOfSpan(lot: LotAsKnown): Assumption[] {
  if (lot.kind === "founder") return assumedOfLot(lot);
  const shares = lot.parents.length > 1 && lot.parents.some(({ share }) => share === undefined);
  const ofShares = shares ? [SHARES_OF_PARENTS] : [];
  if (lot.kind !== "grow-out") return ofShares;
  if (nothingBounds(lot)) return [BEGINS_ANEW];
  return [
    ...ofShares,
    ...ofPlants(lot),
    ...(lot.foreignPollen === undefined && mayOutcross(lot) ? [NOT_ASSESSED] : []),
  ];
}

function ofPlants(lot: GrowOutAsKnown): Assumption[] {
  const { sexes, selfIncompatible, pollenShares } = lot;
  const selfingRate = typeof lot.selfingRate === "object" ? lot.selfingRate.high : lot.selfingRate;
  const pollenParents = boundsOf(lot.pollenParents).high ?? 2;
  const seedParents = boundsOf(lot.seedParents).high ?? 2;
  const ofPlot = plotParentsAssumed({
    pollenParents,
    seedParents,
    sexes,
    selfIncompatible,
    selfingRate,
    pollenShares,
    seedShares: "equal",
  });
  const unknown = lot.seedShares === undefined || lot.seedShares === "unknown";
  return [...(unknown && seedParents > 1 ? [SHARES_OF_SEED] : []), ...ofPlot];
}

function mayOutcross({ selfingRate }: GrowOutAsKnown): boolean {
  return (typeof selfingRate === "object" ? selfingRate.low : (selfingRate ?? 0)) < 1;
}

const SHARES_OF_PARENTS: Assumption = {
  code: "parent-shares-between",
  text: "each parent lot of unknown share gave between nothing and all that the known shares leave",
};
const SHARES_OF_SEED: Assumption = {
  code: "seed-shares-between",
  text: "the seed came from one plant nearly alone at the worst, from all alike at the best",
};
const BEGINS_ANEW: Assumption = {
  code: "measured-from-here",
  text: "nothing bounds the plants, so that the measure begins with this lot as with a new founder",
};
const NOT_ASSESSED: Assumption = {
  code: "foreign-pollen-not-assessed",
  text: "foreign pollen was not assessed and is computed as 0",
};

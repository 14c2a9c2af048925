import { isCv, type Shares } from "@/lib/science/effective-size/plot-parents";
import { plotParentsFaults } from "@/lib/science/effective-size/plot-parents-faults";
import { spanFaults } from "@/lib/science/effective-size/span-faults";
import { faultsAmong, shareFault } from "@/lib/science/limits";
import { crossFaults } from "@/lib/science/lineage/cross-faults";
import { boundsOf, plantsKnown, rateEnds } from "@/lib/science/lineage/drift-ends";
import type { LineageLot } from "@/lib/science/lineage/lots";
import type { GrowOutAsKnown, LotAsKnown, ParentShareKnown } from "@/lib/science/lineage/span-lots";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

/** Whether nothing bounds the plants of a grow-out: then no figure follows from them. */
export function nothingBounds(lot: LotAsKnown): boolean {
  return lot.kind === "grow-out" && ofSpan(lot).some(({ code }) => code === "not-bounded");
}

/** What is wrong with a grow-out as far as it is known, apart from who its parents are. Nothing is wrong where nothing bounds it. */
export function knownLotFaults(lot: LotAsKnown, at: Path): Refusal[] {
  if (lot.kind !== "grow-out") return [];
  const faults = [
    ...rateFaults(lot, at),
    ...faultsAmong(shareFault(at, "foreignPollen", lot.foreignPollen)),
    ...(lot.parents.some(({ role }) => role !== undefined) ? crossFaults(lot, at) : []),
    ...uncountedFaults(lot, at),
  ];
  if (faults.length > 0) return faults;
  const selfingRate = lot.selfingRate === undefined ? undefined : rateEnds(lot.selfingRate).high;
  if (plantsKnown(lot)) return plotParentsFaults({ ...lot, selfingRate }, at);
  if (lot.pollenShares !== undefined && !isEqual(lot.pollenShares)) {
    const needed = "they go with counted plants and known seed shares only: count both, or leave pollenShares out";
    const wrong = "says how plants shared that were not all counted";
    return [refusal("pollen-shares-of-uncounted", [...at, "pollenShares"], lot.pollenShares, wrong, needed)];
  }
  return ofSpan(lot)
    .filter(({ code }) => code !== "not-bounded")
    .map((each) => ({ ...each, path: [...at, ...pathIn(lot, each.path)] }));
}

/** Stands in for a lot where only the order of the lots and the sums of shares are asked: parts without a share take what is left, evenly. */
export function forOrder(lot: LotAsKnown): LineageLot {
  if (lot.kind === "founder" || lot.kind === "split") return lot;
  return { id: lot.id, kind: "blend", parents: evenly(lot.parents) };
}

function evenly(parents: readonly ParentShareKnown[]) {
  const unknown = parents.filter(({ share }) => share === undefined).length;
  const known = parents.reduce((sum, { share = 0 }) => sum + share, 0);
  const rest = Math.max(0, 1 - known) / Math.max(1, unknown);
  return parents.map(({ id, share = rest }) => ({ id, share }));
}

function ofSpan(lot: GrowOutAsKnown): Refusal[] {
  if (plantsKnown(lot)) return [];
  const { sexes, selfIncompatible, seedShares, seedParentsMayNotShed } = lot;
  const selfingRate = lot.selfingRate === undefined ? undefined : rateEnds(lot.selfingRate).high;
  const pollenParents = boundsOf(lot.pollenParents);
  const seedParents = boundsOf(lot.seedParents);
  const known = { sexes, selfIncompatible, seedShares, seedParentsMayNotShed };
  return spanFaults({ pollenParents, seedParents, selfingRate, ...known });
}

/** Lots of the same plants are joined plant by plant: that takes counted plants. */
function uncountedFaults(lot: GrowOutAsKnown, at: Path): Refusal[] {
  if (lot.plants === undefined || plantsKnown(lot)) return [];
  const needed = "count the plants, the seed parents and what each gave, or leave it out";
  return [refusal("plants-not-counted", [...at, "plants"], lot.plants, "is said of plants that are not known", needed)];
}

function rateFaults({ selfingRate }: GrowOutAsKnown, at: Path): Refusal[] {
  if (typeof selfingRate !== "object") return faultsAmong(shareFault(at, "selfingRate", selfingRate));
  const { low, high } = selfingRate;
  const place = [...at, "selfingRate"];
  const faults = faultsAmong(shareFault(place, "low", low), shareFault(place, "high", high));
  if (faults.length > 0 || high >= low) return faults;
  return [
    refusal("bounds-crossed", [...place, "high"], high, `is less than the ${low} it cannot fall below`, "write both"),
  ];
}

function isEqual(shares: Shares): boolean {
  return shares === "equal" || (isCv(shares) && shares.cv === 0);
}

/** A count that was given as one number has no ends to point into. */
function pathIn(lot: GrowOutAsKnown, path: Path): Path {
  const [key, end] = path;
  const counted = (key === "pollenParents" || key === "seedParents") && typeof lot[key] === "number";
  return counted && (end === "low" || end === "high") ? [key] : path;
}

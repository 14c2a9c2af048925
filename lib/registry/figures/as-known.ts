import { selfIncompatible, selfingRateEnds, separateSexes } from "@/lib/science/crops/mating";
import { knownLotFaults } from "@/lib/science/lineage/known-lot-faults";
import { isCross } from "@/lib/science/lineage/lots";
import { assumedOfSpan } from "@/lib/science/lineage/span-assumed";
import type { GrowOutAsKnown, LotAsKnown, ParentShareKnown } from "@/lib/science/lineage/span-lots";
import type { Assumption } from "@/lib/science/outcome";
import { plantsInBounds, seedParentsMayNotShed } from "../grow-outs/plants-in-bounds";
import { founderHolding } from "./founders-of-span";
import { growOutNode, type LineageNode, lotNode } from "./lineage-nodes";
import type { GrowOutRecord, LotRecord, ParentRecord, VarietyRecord } from "./records";

/** A node of the lineage as far as it is known, with what was taken for it. */
export interface NodeAsKnown {
  readonly lot: LotAsKnown;
  readonly assumed: readonly Assumption[];
}

/** What stands for the seed that a grow-out was sown with, where nobody wrote which lot it was. */
export const sownNode = (growOutId: string) => `sown in ${growOutNode(growOutId)}`;

/** A lot; `within`: its own coancestry, of a founder. */
export function lotAsKnown({ lot, assumed }: LineageNode, record: LotRecord, within: number): NodeAsKnown {
  if (lot.kind === "founder") {
    if (within === 0) return { lot, assumed };
    return {
      lot: founderHolding(lot, within),
      assumed: assumed.filter(({ code }) => code !== "founder-seeds-unrelated"),
    };
  }
  if (lot.kind !== "blend") return { lot, assumed: [] };
  const known: LotAsKnown = { ...lot, parents: sharesKnown(record.parents) };
  return { lot: known, assumed: assumedOfSpan(known) };
}

/**
 * A grow-out. Numbers that were not counted lie between the bounds that the grow-out's own page shows; a selfing rate that nobody wrote lies
 * where the crop's usually does. Counts that cannot be, and a sowing of which the lot is not on record, bound nothing.
 */
export function growOutAsKnown(node: LineageNode, record: GrowOutRecord, variety: VarietyRecord): NodeAsKnown {
  const { id } = node.lot;
  const { profile } = variety;
  const cross = node.lot.kind === "grow-out" && isCross(node.lot) ? node.lot : null;
  const separate = separateSexes(profile) || cross !== null;
  const parents = cross ? cross.parents : sharesKnown(record.parents);
  const rate = selfingRateEnds(profile);
  const usual = !cross && record.selfingRate === null && rate.high > 0;
  const mating = separate
    ? ({ sexes: "separate", selfingRate: 0 } as const)
    : { selfIncompatible: selfIncompatible(profile), selfingRate: record.selfingRate ?? rate };
  const foreign = record.foreignPollen === null ? {} : { foreignPollen: record.foreignPollen };
  const nothing: GrowOutAsKnown = {
    ...{ id, kind: "grow-out", ...mating },
    parents: parents.length > 0 ? parents : [{ id: sownNode(record.id), share: 1 }],
  };
  const told = toldOf(node, record, variety, { ...nothing, ...foreign });
  const lot = parents.length === 0 || told === null || knownLotFaults(told, []).length > 0 ? nothing : told;
  const ofRate = usual && lot !== nothing ? [usualRate(rate)] : [];
  return { lot, assumed: [...ofRate, ...assumedOfSpan(lot)] };
}

function toldOf(
  { plot, impossible, lot }: LineageNode,
  record: GrowOutRecord,
  { profile }: VarietyRecord,
  bare: GrowOutAsKnown,
): GrowOutAsKnown | null {
  if (impossible.length > 0) return null;
  if (plot !== null) {
    const { pollenParents, seedParents, seedShares, pollenShares } = plot;
    const plants = lot.kind === "grow-out" && lot.plants !== undefined ? { plants: lot.plants } : {};
    return { ...bare, ...plants, pollenParents, seedParents, seedShares, ...(pollenShares ? { pollenShares } : {}) };
  }
  const bounds = plantsInBounds(record, profile, record.mostStanding ?? null);
  // In a cross nobody need have counted how many of the plants were of which side.
  const crossed = lot.kind === "grow-out" && isCross(lot);
  const between = crossed ? { ...bounds, pollenParents: { ...bounds.pollenParents, low: 1 } } : bounds;
  const mayNotShed = bare.sexes !== "separate" && seedParentsMayNotShed(record) ? { seedParentsMayNotShed: true } : {};
  return { ...bare, ...between, seedShares: record.seedShares ?? "unknown", ...mayNotShed };
}

/** Several lots on one side of a cross. */
export function mixAsKnown(id: string, side: readonly ParentRecord[]): NodeAsKnown {
  const lot: LotAsKnown = { id, kind: "blend", parents: sharesKnown(side) };
  return { lot, assumed: assumedOfSpan(lot) };
}

/** A share that nobody wrote is left out; a single parent has all of it. */
function sharesKnown(parents: readonly ParentRecord[]): ParentShareKnown[] {
  if (parents.length === 1) return parents.map(({ id }) => ({ id: lotNode(id), share: 1 }));
  return parents.map(({ id, share }) => (share === null ? { id: lotNode(id) } : { id: lotNode(id), share }));
}

function usualRate({ low, high }: { low: number; high: number }): Assumption {
  const figure = (rate: number) => Number(rate.toPrecision(6));
  const text = `the selfing rate lies between ${figure(low)} and ${figure(high)}, as it usually does in the crop`;
  return { code: "selfing-rate-between", text };
}

import { lotFaults } from "@/lib/science/lineage/lot-faults";
import { type LineageLot, type ParentShare, parentsOf } from "@/lib/science/lineage/lots";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

/**
 * Lots in an order in which every parent stands before its offspring. A lot's place in that order is its rank; parents
 * and shares of all lots lie end to end, those of rank r from `firstParent[r]` up to `firstParent[r + 1]`.
 */
export interface Pedigree {
  /** by rank */
  readonly lots: readonly LineageLot[];
  readonly rankOf: ReadonlyMap<string, number>;
  /** by rank: the place of the lot in the list that was given */
  readonly placeOf: readonly number[];
  readonly firstParent: Int32Array;
  readonly parentRank: Int32Array;
  /** scaled to sum 1 */
  readonly parentShare: Float64Array;
}

/** Orders the lots, or refuses what is no pedigree: repeated ids, unknown parents, shares not of sum 1, a cycle. */
export function pedigree(lots: readonly LineageLot[]): Outcome<Pedigree> {
  const placeOf = new Map<string, number>();
  const faults: Refusal[] = [];
  lots.forEach((lot, place) => {
    if (placeOf.has(lot.id)) faults.push(repeated(["lots", place, "id"], lot.id));
    else placeOf.set(lot.id, place);
  });
  lots.forEach((lot, place) => {
    for (const fault of lotFaults(lot, ["lots", place])) faults.push(fault);
    for (const fault of parentFaults(lot, place, placeOf)) faults.push(fault);
  });
  if (faults.length > 0) return refused(...faults);
  const order = parentsFirst(lots, placeOf);
  if (order.length < lots.length) return refused(cycleRefusal(lots, placeOf, order));
  return accepted(laidOut(lots, order));
}

function parentFaults(lot: LineageLot, place: number, placeOf: ReadonlyMap<string, number>): Refusal[] {
  const parents = parentsOf(lot);
  if (soundParents(parents, placeOf)) return [];
  const faults: Refusal[] = [];
  const seen = new Set<string>();
  parents.forEach(({ id }, index) => {
    const path = ["lots", place, "parents", index, "id"];
    if (!placeOf.has(id)) {
      faults.push(
        refusal("unknown-parent", path, id, "is no lot of this lineage", "give that lot too, as a founder if need be"),
      );
    } else if (seen.has(id)) faults.push(repeated(path, id));
    seen.add(id);
  });
  return faults;
}

/** One or two parents that are known and not the same: the usual case, told at once. */
function soundParents([one, other, third]: readonly ParentShare[], placeOf: ReadonlyMap<string, number>): boolean {
  if (third !== undefined || one?.id === other?.id) return one === undefined;
  return one !== undefined && placeOf.has(one.id) && (other === undefined || placeOf.has(other.id));
}

function repeated(path: (string | number)[], id: string): Refusal {
  return refusal("repeated-id", path, id, "stands here a second time", "name each once, with its whole share");
}

/** Places of the lots, each after all its parents; lots on or below a cycle are left out. */
function parentsFirst(lots: readonly LineageLot[], placeOf: ReadonlyMap<string, number>): number[] {
  const waitingFor = lots.map((lot) => parentsOf(lot).length);
  const offspring: number[][] = lots.map(() => []);
  lots.forEach((lot, place) => {
    for (const { id } of parentsOf(lot)) offspring[placeOf.get(id) ?? place]?.push(place);
  });
  const order: number[] = [];
  waitingFor.forEach((count, place) => {
    if (count === 0) order.push(place);
  });
  for (let next = 0; next < order.length; next++) {
    for (const child of offspring[order[next] ?? 0] ?? []) {
      const left = (waitingFor[child] ?? 0) - 1;
      waitingFor[child] = left;
      if (left === 0) order.push(child);
    }
  }
  return order;
}

/** Walks from parent to parent among the lots that found no place: it must come round. */
function cycleRefusal(
  lots: readonly LineageLot[],
  placeOf: ReadonlyMap<string, number>,
  order: readonly number[],
): Refusal {
  const placed = new Set(order);
  const walked = new Set<string>();
  let lot = lots.find((_, place) => !placed.has(place));
  while (lot && !walked.has(lot.id)) {
    walked.add(lot.id);
    const above = parentsOf(lot).find(({ id }) => !placed.has(placeOf.get(id) ?? -1));
    lot = above && lots[placeOf.get(above.id) ?? -1];
  }
  const path = [...walked];
  const round = lot ? [...path.slice(path.indexOf(lot.id)), lot.id] : path;
  const shown = round.length > 8 ? [...round.slice(0, 7), "...", round[0]] : round;
  return refusal(
    "cycle",
    ["lots"],
    shown.join(" from "),
    "is a ring",
    "no lot can be its own ancestor: mend one of these",
  );
}

function laidOut(lots: readonly LineageLot[], order: readonly number[]): Pedigree {
  const ranked = order.map((place) => lots[place]).filter((lot): lot is LineageLot => lot !== undefined);
  const rankOf = new Map(ranked.map((lot, rank) => [lot.id, rank]));
  const firstParent = new Int32Array(ranked.length + 1);
  ranked.forEach((lot, rank) => {
    firstParent[rank + 1] = (firstParent[rank] ?? 0) + parentsOf(lot).length;
  });
  const links = firstParent[ranked.length] ?? 0;
  const parentRank = new Int32Array(links);
  const parentShare = new Float64Array(links);
  ranked.forEach((lot, rank) => {
    const parents = parentsOf(lot);
    const sum = parents.reduce((total, { share }) => total + share, 0);
    parents.forEach(({ id, share }, index) => {
      const link = (firstParent[rank] ?? 0) + index;
      parentRank[link] = rankOf.get(id) ?? 0;
      parentShare[link] = share / sum;
    });
  });
  return { lots: ranked, rankOf, placeOf: order, firstParent, parentRank, parentShare };
}

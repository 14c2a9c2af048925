import { atOnce, eachInSteps, type Steps } from "@/lib/science/in-steps";
import { lotFaults } from "@/lib/science/lineage/lot-faults";
import { type LineageLot, type ParentShare, parentsOf, type SownShare } from "@/lib/science/lineage/lots";
import { plantsFaults } from "@/lib/science/lineage/plants-faults";
import { type PedigreeLot, withSamePlants } from "@/lib/science/lineage/same-plants";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

/**
 * Lots in an order in which every parent stands before its offspring. A lot's place in that order is its rank; parents
 * and shares of all lots lie end to end, those of rank r from `firstParent[r]` up to `firstParent[r + 1]`. Where several lots were harvested
 * from the same plants, what stands between has ranks of its own (see withSamePlants), with places behind those of the list that was given.
 */
export interface Pedigree {
  /** by rank */
  readonly lots: readonly PedigreeLot[];
  readonly rankOf: ReadonlyMap<string, number>;
  /** by rank: the place of the lot in the list that was given */
  readonly placeOf: readonly number[];
  readonly firstParent: Int32Array;
  readonly parentRank: Int32Array;
  /** shares of the genes that came from parent lots: of sum 1, but for a harvest of shared plants */
  readonly parentShare: Float64Array;
}

/** Orders the lots, or refuses what is no pedigree: repeated ids, unknown parents, shares not of sum 1, a cycle. */
export function pedigree(lots: readonly LineageLot[]): Outcome<Pedigree> {
  return atOnce(pedigreeInSteps(lots));
}

/** The same, laid down now and then. */
export function* pedigreeInSteps(lots: readonly LineageLot[]): Steps<Outcome<Pedigree>> {
  const placeOf = new Map<string, number>();
  const faults: Refusal[] = [];
  lots.forEach((lot, place) => {
    if (placeOf.has(lot.id)) faults.push(repeated(["lots", place, "id"], lot.id));
    else placeOf.set(lot.id, place);
  });
  yield* eachInSteps(lots, (lot, place) => {
    if (lotFaults(lot, []).length > 0) faults.push(...lotFaults(lot, ["lots", place]));
    for (const fault of parentFaults(lot, place, placeOf)) faults.push(fault);
  });
  if (faults.length === 0) faults.push(...plantsFaults(lots));
  if (faults.length > 0) return refused(...faults);
  const all = withSamePlants(lots);
  for (let place = lots.length; place < all.length; place += 1) placeOf.set(all[place]?.id ?? "", place);
  yield;
  const order = parentsFirst(all, placeOf);
  if (order.length < all.length) return refused(cycleRefusal(lots, placeOf, parentsFirst(lots, placeOf)));
  yield;
  return accepted(yield* laidOut(all, order));
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
function soundParents(parents: readonly ParentShare[], placeOf: ReadonlyMap<string, number>): boolean {
  if (parents.length > 2) return false;
  const [one, other] = [parents[0], parents[1]];
  if (one === undefined) return true;
  return placeOf.has(one.id) && (other === undefined || (other.id !== one.id && placeOf.has(other.id)));
}

function repeated(path: (string | number)[], id: string): Refusal {
  return refusal("repeated-id", path, id, "stands here a second time", "name each once, with its whole share");
}

/** Places of the lots, each after all its parents; lots on or below a cycle are left out. */
function parentsFirst(lots: readonly PedigreeLot[], placeOf: ReadonlyMap<string, number>): number[] {
  const waitingFor = new Int32Array(lots.length);
  const offspring = new Map<number, number[]>();
  lots.forEach((lot, place) => {
    const links = linksOf(lot);
    waitingFor[place] = links.length;
    for (const { id } of links) {
      const parent = placeOf.get(id) ?? place;
      const known = offspring.get(parent);
      if (known) known.push(place);
      else offspring.set(parent, [place]);
    }
  });
  const order: number[] = [];
  waitingFor.forEach((count, place) => {
    if (count === 0) order.push(place);
  });
  for (let next = 0; next < order.length; next++) {
    for (const child of offspring.get(order[next] ?? 0) ?? []) {
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

function linksOf(lot: PedigreeLot): readonly SownShare[] {
  return lot.kind === "founder" ? [] : lot.parents;
}

/** Shares of the genes that came from the parents: scaled to sum 1; of a cross the pollen side's less for the foreign pollen in it. */
function sharesOf(lot: PedigreeLot): readonly number[] {
  const links = linksOf(lot);
  if (lot.kind === "harvest") return links.map(({ share }) => share);
  if (links.length === 1 && links[0]?.role === undefined) return WHOLE;
  const foreign = lot.kind === "grow-out" ? (lot.foreignPollen ?? 0) : 0;
  const given = links.map(({ share, role }) => (role === "pollen parent" ? share * (1 - foreign) : share));
  const sum = given.reduce((total, share) => total + share, 0);
  return given.map((share) => share / sum);
}

const WHOLE = [1] as const;

function* laidOut(lots: readonly PedigreeLot[], order: readonly number[]): Steps<Pedigree> {
  const ranked = order.map((place) => lots[place]).filter((lot): lot is PedigreeLot => lot !== undefined);
  const rankOf = new Map(ranked.map((lot, rank) => [lot.id, rank]));
  const firstParent = new Int32Array(ranked.length + 1);
  ranked.forEach((lot, rank) => {
    firstParent[rank + 1] = (firstParent[rank] ?? 0) + linksOf(lot).length;
  });
  const links = firstParent[ranked.length] ?? 0;
  const parentRank = new Int32Array(links);
  const parentShare = new Float64Array(links);
  yield* eachInSteps(ranked, (lot, rank) => {
    const shares = sharesOf(lot);
    linksOf(lot).forEach(({ id }, index) => {
      const link = (firstParent[rank] ?? 0) + index;
      parentRank[link] = rankOf.get(id) ?? 0;
      parentShare[link] = shares[index] ?? 0;
    });
  });
  return { lots: ranked, rankOf, placeOf: order, firstParent, parentRank, parentShare };
}

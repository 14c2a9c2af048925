import { compareCodePoints } from "@/lib/science/code-point-order";
import { type Refusal, refusal } from "@/lib/science/outcome";
import type { Moment, StemLot, StemTree } from "../stem";

/** A stem from a parent, with the share by which it is drawn. */
export interface Link {
  readonly parent: string;
  readonly share: number;
  /** it gave the pollen of a cross */
  readonly pollen: boolean;
}

/** A lot in its place in the descent. */
export interface Grown {
  readonly lot: StemLot;
  /** harvests between it and its earliest ancestor on record; a split or blend adds none */
  readonly generation: number;
  /** where it stands among the years */
  readonly year: number;
  /** drawn out where its moment is known to no better than this; null: within a year */
  readonly fuzzy: Moment | null;
  /** its year was not written: it stands by those of its kin */
  readonly byKin: boolean;
  readonly links: readonly Link[];
  readonly children: readonly string[];
  /** a parent is named that cannot be drawn: a gap */
  readonly gap: boolean;
}

export interface Generations {
  /** each after all its parents */
  readonly lots: readonly Grown[];
  readonly byId: ReadonlyMap<string, Grown>;
  /** what does not fit together and is drawn as a gap instead */
  readonly faults: readonly Refusal[];
}

/** The least part of a year between a lot and its child. */
const least = 0.03;
/** A harvest of which only the year is known stands so far into it. */
const autumn = 0.78;

/**
 * The first step: who comes from whom and when. Links that cannot be (to a lot that is not here, round in a ring, the second of two with one
 * name) are left out and told as faults; shares that do not sum to 1 are drawn in proportion and told. The same lots in any order give the same.
 */
export function generations(tree: StemTree): Generations {
  const faults: Refusal[] = [];
  const lots = unique(tree.lots, faults);
  const known = new Set(lots.map(({ id }) => id));
  const links = new Map(lots.map((lot) => [lot.id, knownLinks(lot, known, faults)]));
  return settled(lots, links, faults);
}

function unique(lots: readonly StemLot[], faults: Refusal[]): StemLot[] {
  const found = new Map<string, StemLot>();
  for (const lot of lots) {
    if (!found.has(lot.id)) found.set(lot.id, lot);
    else faults.push(refusal("repeated-id", ["lots", lot.id], lot.number, "stands here a second time", "name it once"));
  }
  return [...found.values()].sort(byYear);
}

/** By the earliest possible moment, then by number and id, so that the order in which lots come does not matter. */
function byYear(one: StemLot, other: StemLot): number {
  const [a, b] = [one.at?.first ?? Number.POSITIVE_INFINITY, other.at?.first ?? Number.POSITIVE_INFINITY];
  if (a !== b) return a < b ? -1 : 1;
  return compareCodePoints(one.number, other.number) || compareCodePoints(one.id, other.id);
}

function knownLinks(lot: StemLot, known: ReadonlySet<string>, faults: Refusal[]): { links: Link[]; gap: boolean } {
  const parents = lot.parents.filter(({ id }) => known.has(id) && id !== lot.id);
  for (const { id } of lot.parents) {
    if (parents.some((parent) => parent.id === id)) continue;
    const wrong = id === lot.id ? "is named as its own parent" : `of lot ${lot.number} is no lot on record here`;
    const needed = "it is drawn as a gap: name a lot that is on record";
    faults.push(refusal("unknown-parent", ["lots", lot.id, "parents"], id, wrong, needed));
  }
  const named = [...new Map(parents.map((parent) => [parent.id, parent])).values()];
  const sum = named.reduce((total, { share }) => total + (share ?? Number.NaN), 0);
  const told = Number.isFinite(sum) && sum > 0 && named.every(({ share }) => share !== null && share >= 0);
  const gap = parents.length < lot.parents.length;
  if (told && !gap && Math.abs(sum - 1) > 0.011) {
    const path = ["lots", lot.id, "parents"];
    const wrong = `is the sum of the shares of lot ${lot.number}`;
    faults.push(refusal("shares-not-whole", path, Number(sum.toFixed(3)), wrong, "they must sum to 1"));
  }
  return {
    links: named.map(({ id, share, role }) => ({
      parent: id,
      share: told ? (share ?? 0) / sum : 1 / named.length,
      pollen: role === "pollen parent",
    })),
    gap,
  };
}

type Links = Map<string, { links: Link[]; gap: boolean }>;

function settled(lots: readonly StemLot[], links: Links, faults: Refusal[]): Generations {
  const order = parentsFirst(lots, links, faults);
  const children = new Map<string, string[]>(order.map(({ id }) => [id, []]));
  for (const { id } of order) for (const { parent } of links.get(id)?.links ?? []) children.get(parent)?.push(id);
  const generation = new Map<string, number>();
  for (const lot of order) {
    const above = (links.get(lot.id)?.links ?? []).map(({ parent }) => generation.get(parent) ?? 0);
    const grown = lot.kind === "harvest" && above.length > 0 ? 1 : 0;
    generation.set(lot.id, Math.max(0, ...above) + grown);
  }
  const placed = years(order, links, children);
  const grown = order.map((lot): Grown => {
    const own = links.get(lot.id) ?? { links: [], gap: false };
    const place = placed.get(lot.id) ?? { year: 0, fuzzy: null };
    return {
      lot,
      generation: generation.get(lot.id) ?? 0,
      year: place.year,
      fuzzy: place.fuzzy,
      byKin: lot.at === null,
      links: own.links,
      children: children.get(lot.id) ?? [],
      gap: own.gap,
    };
  });
  return { lots: grown, byId: new Map(grown.map((each) => [each.lot.id, each])), faults };
}

/** Each lot after its parents. Where only rings are left, the earliest lot of them is taken and its links into the ring are cut. */
function parentsFirst(lots: readonly StemLot[], links: Links, faults: Refusal[]): StemLot[] {
  const waiting = new Map(lots.map(({ id }) => [id, links.get(id)?.links.length ?? 0]));
  const below = new Map<string, StemLot[]>(lots.map(({ id }) => [id, []]));
  for (const lot of lots) for (const { parent } of links.get(lot.id)?.links ?? []) below.get(parent)?.push(lot);
  const order: StemLot[] = [];
  const taken = new Set<string>();
  const ready = lots.filter(({ id }) => waiting.get(id) === 0);
  let next = 0;
  const take = (lot: StemLot) => {
    taken.add(lot.id);
    order.push(lot);
    for (const child of below.get(lot.id) ?? []) {
      const left = (waiting.get(child.id) ?? 0) - 1;
      waiting.set(child.id, left);
      if (left === 0 && !taken.has(child.id)) ready.push(child);
    }
  };
  while (order.length < lots.length) {
    const lot = ready[next];
    if (lot) {
      next += 1;
      if (!taken.has(lot.id)) take(lot);
      continue;
    }
    const cut = lots.find(({ id }) => !taken.has(id));
    if (!cut) break;
    const own = links.get(cut.id);
    const kept = (own?.links ?? []).filter(({ parent }) => taken.has(parent));
    links.set(cut.id, { links: kept, gap: true });
    const needed = "it is drawn as a gap: no lot can be its own ancestor";
    faults.push(refusal("cycle", ["lots", cut.id], cut.number, "stands in a ring of parents", needed));
    take(cut);
  }
  return order;
}

interface Place {
  readonly year: number;
  readonly fuzzy: Moment | null;
}

function years(
  order: readonly StemLot[],
  links: Links,
  children: ReadonlyMap<string, readonly string[]>,
): Map<string, Place> {
  const placed = new Map<string, Place>();
  const byId = new Map(order.map((lot) => [lot.id, lot]));
  const firstOfAll = Math.min(...order.map(({ at }) => at?.first ?? Number.POSITIVE_INFINITY));
  const start = Number.isFinite(firstOfAll) ? firstOfAll : 0;
  for (const lot of order) {
    const above = (links.get(lot.id)?.links ?? []).map(({ parent }) => placed.get(parent)?.year ?? start);
    const after = above.length > 0 ? Math.max(...above) + least : Number.NEGATIVE_INFINITY;
    placed.set(lot.id, lot.at ? withMoment(lot.at, lot.kind, after) : byKinOf(lot, after));
  }
  return placed;

  function byKinOf(lot: StemLot, after: number): Place {
    const starts = (children.get(lot.id) ?? []).flatMap((id) => byId.get(id)?.at?.first ?? []);
    const before = starts.length > 0 ? Math.min(...starts) : null;
    if (after === Number.NEGATIVE_INFINITY) {
      const last = before ?? start;
      return { year: last - 2, fuzzy: { first: last - 4, last } };
    }
    const last = before !== null && before > after ? before : after + 2;
    return { year: (after + last) / 2, fuzzy: { first: after, last } };
  }
}

function withMoment({ first, last }: Moment, kind: StemLot["kind"], after: number): Place {
  const sharp = last - first <= 1.02;
  const natural = first + (last - first) * (sharp && kind !== "split" && kind !== "blend" ? autumn : 0.5);
  const year = natural >= after ? natural : Math.min(Math.max(last, natural), after);
  return { year, fuzzy: sharp ? null : { first, last } };
}

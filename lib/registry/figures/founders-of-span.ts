import type { FounderLot } from "@/lib/science/lineage/lots";
import type { FounderPair } from "@/lib/science/lineage/span-lots";
import { grouped } from "../change-set/grouped";
import { type LineageNode, lotNode } from "./lineage-nodes";
import type { FigureRecords, KinshipRecord, LotRecord } from "./records";

/** What the founders of some records are to themselves and to each other. */
export interface FoundersOfSpan {
  /** θ within each founder lot of which it is above 0, by lot id */
  readonly within: ReadonlyMap<string, number>;
  /** pairs whose nearness moves a figure */
  readonly pairs: readonly FounderPair[];
}

/**
 * A founder of a selfing crop that is one line is all alike: θ = ½(1 + F). A founder that shares x with another holds at least x within
 * itself. Two founder lots of one variety of which nobody wrote how they are related may be seed of one pool: from unrelated to as near as
 * the older is to itself. Pairs of founders whose seeds are unrelated within share nothing either way, and are left out.
 */
export function foundersOfSpan(records: FigureRecords, nodes: readonly LineageNode[]): FoundersOfSpan {
  const selfing = new Set(
    records.varieties.flatMap(({ id, profile }) => (profile.matingSystem === "selfing" ? [id] : [])),
  );
  const founders = new Map<string, LotRecord>();
  const within = new Map<string, number>();
  records.lots.forEach((lot, place) => {
    const made = nodes[place]?.lot;
    if (made?.kind !== "founder") return;
    founders.set(lot.id, lot);
    if (lot.founderLines === "one" && selfing.has(lot.varietyId)) within.set(lot.id, (1 + (made.inbreeding ?? 0)) / 2);
  });
  const told = (records.kinships ?? []).filter((each) => founders.has(each.firstId) && founders.has(each.secondId));
  for (const { firstId, secondId, coancestry } of told) {
    for (const id of [firstId, secondId]) within.set(id, Math.max(within.get(id) ?? 0, coancestry ?? 0));
  }
  return { within, pairs: [...told.map((each) => toldPair(each, within)), ...untoldPairs(founders, within, told)] };
}

/** A founder that holds so much within itself; seeds that are so alike are at least as inbred as that takes: θ ≤ ½(1 + F). */
export function founderHolding(lot: FounderLot, within: number): FounderLot {
  return { ...lot, coancestry: within, inbreeding: Math.max(lot.inbreeding ?? 0, 2 * within - 1) };
}

function toldPair(
  { firstId, secondId, kind, coancestry }: KinshipRecord,
  within: ReadonlyMap<string, number>,
): FounderPair {
  const asOne = Math.min(within.get(firstId) ?? 0, within.get(secondId) ?? 0);
  const near = kind === "unrelated" ? 0 : kind === "same source" ? asOne : Math.min(coancestry ?? 0, asOne);
  return { a: lotNode(firstId), b: lotNode(secondId), coancestry: near };
}

function untoldPairs(
  founders: ReadonlyMap<string, LotRecord>,
  within: ReadonlyMap<string, number>,
  told: readonly KinshipRecord[],
): FounderPair[] {
  const known = new Set(told.flatMap(({ firstId, secondId }) => [`${firstId} ${secondId}`, `${secondId} ${firstId}`]));
  const alike = [...within].flatMap(([id, theta]) => (theta > 0 ? (founders.get(id) ?? []) : []));
  return [...grouped(alike, ({ varietyId }) => varietyId).values()].flatMap((lots) =>
    lots.flatMap((one, place) =>
      lots
        .slice(place + 1)
        .filter((other) => !known.has(`${one.id} ${other.id}`))
        .map((other): FounderPair => ({ a: lotNode(one.id), b: lotNode(other.id), coancestry: "unknown" })),
    ),
  );
}

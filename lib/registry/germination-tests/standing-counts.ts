import type { CountKind } from "@/lib/schemas/germination-test/counts";

/** A stored count as the rules need it. */
export interface StoredCount extends Readonly<Record<Exclude<CountKind, "normal">, number | null>> {
  readonly id: string;
  readonly day: number | null;
  readonly normal: number;
  readonly replacesId: string | null;
  readonly takenBack: boolean;
}

/** A count that stands, and what it was before it was corrected, newest first. */
export interface StandingCount extends StoredCount {
  readonly before: readonly StoredCount[];
}

/**
 * The counts of a replicate that stand, in the order of days (a count without a day last): those that no later one replaces, without
 * the corrections that only take one back. What was replaced stays with the one that replaced it.
 */
export function standingCounts<C extends StoredCount>(counts: readonly C[]): (C & StandingCount)[] {
  const byId = new Map(counts.map((count) => [count.id, count]));
  const replaced = new Set(counts.flatMap((count) => count.replacesId ?? []));
  return counts
    .filter((count) => !replaced.has(count.id) && !count.takenBack)
    .map((count) => ({ ...count, before: earlierOf(count, byId) }))
    .sort((a, b) => (a.day ?? Number.MAX_VALUE) - (b.day ?? Number.MAX_VALUE) || (a.id < b.id ? -1 : 1));
}

/** Counts that were taken back altogether, with nothing in their place. */
export function countsTakenBack<C extends StoredCount>(counts: readonly C[]): C[] {
  const byId = new Map(counts.map((count) => [count.id, count]));
  return counts
    .filter((count) => count.takenBack && count.replacesId !== null)
    .flatMap((count) => byId.get(count.replacesId ?? "") ?? []);
}

function earlierOf<C extends StoredCount>(count: C, byId: ReadonlyMap<string, C>): C[] {
  const earlier: C[] = [];
  let next = byId.get(count.replacesId ?? "");
  while (next) {
    earlier.push(next);
    next = byId.get(next.replacesId ?? "");
  }
  return earlier;
}

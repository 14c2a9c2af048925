import type { Part } from "@/lib/science/lineage/coancestry-ends";

/** Lots that are kin to each other through parents or founders, in order of rank, and when each is done with. */
export interface GroupOfLots {
  readonly ranks: readonly number[];
  /** lots that must be at hand at once */
  readonly places: number;
  has(rank: number): boolean;
  hasOffspring(rank: number): boolean;
  /** the lots whose last offspring this is */
  doneAfter(rank: number): readonly number[];
}

/** The groups of a lineage: lots of two groups have no ancestor in common, so each is worked through by itself. */
export function groupsOfLots(
  parts: readonly (readonly Part[])[],
  kin: readonly (readonly [number, number])[],
): GroupOfLots[] {
  const head = Int32Array.from(parts, (_, rank) => rank);
  const headOf = (rank: number): number => {
    let at = rank;
    while (head[at] !== at) {
      head[at] = head[head[at] as number] as number;
      at = head[at] as number;
    }
    return at;
  };
  const lastOffspring = new Int32Array(parts.length).fill(-1);
  parts.forEach((made, rank) => {
    for (const part of made) {
      lastOffspring[part.rank] = rank;
      head[headOf(part.rank)] = headOf(rank);
    }
  });
  for (const [a, b] of kin) head[headOf(a)] = headOf(b);

  const done: number[][] = parts.map(() => []);
  lastOffspring.forEach((offspring, rank) => {
    if (offspring >= 0) done[offspring]?.push(rank);
  });
  const ranksOf = new Map<number, number[]>();
  parts.forEach((_, rank) => {
    const of = headOf(rank);
    const ranks = ranksOf.get(of);
    if (ranks) ranks.push(rank);
    else ranksOf.set(of, [rank]);
  });
  return [...ranksOf].map(([of, ranks]) => ({
    ranks,
    places: mostAtOnce(ranks, lastOffspring, done),
    has: (rank) => headOf(rank) === of,
    hasOffspring: (rank) => (lastOffspring[rank] as number) >= 0,
    doneAfter: (rank) => done[rank] ?? [],
  }));
}

function mostAtOnce(ranks: readonly number[], lastOffspring: Int32Array, done: readonly (readonly number[])[]): number {
  let now = 0;
  let most = 0;
  for (const rank of ranks) {
    if ((lastOffspring[rank] as number) >= 0) now += 1;
    most = Math.max(most, now);
    now -= done[rank]?.length ?? 0;
  }
  return most;
}

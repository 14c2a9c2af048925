import type { Pedigree } from "@/lib/science/lineage/pedigree";
import { RankQueue } from "@/lib/science/lineage/rank-queue";

/**
 * Which founders a lot's genes come from: by the founder's rank, its part of the genes, 0 to 1. The parts sum to 1 less what foreign pollen
 * brought.
 *
 *     part(new, founder) = a Σ w_A part(A, founder)        a: share of the genes that came from the parent lots
 *
 * The genes are followed back from the lot, newest ancestor first. `passing` gives a by rank.
 * Source: linear founder representation, Lacy 1989, Zoo Biol. 8:111-123.
 */
export function founderParts(
  { lots, firstParent, parentRank, parentShare }: Pedigree,
  { passing }: { readonly passing: ArrayLike<number> },
): (rank: number) => Map<number, number> {
  const coming = new Float64Array(lots.length);
  const waiting = new RankQueue(lots.length);
  return (rank) => {
    const parts = new Map<number, number>();
    coming[rank] = 1;
    waiting.add(rank);
    while (waiting.count > 0) {
      const lot = waiting.takeNewest();
      const part = coming[lot] as number;
      coming[lot] = 0;
      if (lots[lot]?.kind === "founder") {
        parts.set(lot, part);
        continue;
      }
      const passed = part * (passing[lot] as number);
      for (let link = firstParent[lot] as number; link < (firstParent[lot + 1] as number); link++) {
        const parent = parentRank[link] as number;
        waiting.add(parent);
        coming[parent] = (coming[parent] as number) + passed * (parentShare[link] as number);
      }
    }
    return parts;
  };
}

import type { Pedigree } from "@/lib/science/lineage/pedigree";

/**
 * Which lots must be kept at hand when lots are worked through in order: those of which offspring are still to come.
 * A lot takes a slot when it is settled and gives it back after its last offspring.
 */
export interface LotsInUse {
  /** by rank; -1 where a lot has no offspring */
  readonly slotOf: Int32Array;
  /** by rank of an offspring: the lots whose last one it is; none: left out */
  readonly lastOffspringOf: ReadonlyMap<number, readonly number[]>;
  /** slots needed at once */
  readonly slots: number;
  /** steps that rows of coancestry over the slots in use would take */
  readonly steps: number;
}

export function lotsInUse({ lots, firstParent, parentRank }: Pedigree): LotsInUse {
  const lastOffspring = new Int32Array(lots.length).fill(-1);
  lots.forEach((_, rank) => {
    for (let link = firstParent[rank] as number; link < (firstParent[rank + 1] as number); link++) {
      lastOffspring[parentRank[link] as number] = rank;
    }
  });
  const lastOffspringOf = new Map<number, number[]>();
  lastOffspring.forEach((offspring, rank) => {
    if (offspring < 0) return;
    const known = lastOffspringOf.get(offspring);
    if (known) known.push(rank);
    else lastOffspringOf.set(offspring, [rank]);
  });

  const slotOf = new Int32Array(lots.length).fill(-1);
  const free: number[] = [];
  let slots = 0;
  let used = 0;
  let steps = 0;
  lots.forEach((_, rank) => {
    if ((lastOffspring[rank] as number) >= 0) {
      slotOf[rank] = free.pop() ?? slots++;
      used += 1;
      steps += used * ((firstParent[rank + 1] as number) - (firstParent[rank] as number));
    }
    for (const done of lastOffspringOf.get(rank) ?? []) {
      free.push(slotOf[done] as number);
      used -= 1;
    }
  });
  return { slotOf, lastOffspringOf, slots, steps };
}

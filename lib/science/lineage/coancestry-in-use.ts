import type { LineageFigures } from "@/lib/science/lineage/figures";
import type { LotsInUse } from "@/lib/science/lineage/lots-in-use";
import type { Pedigree } from "@/lib/science/lineage/pedigree";
import type { CoancestryAmongParents, WeightedCoancestry } from "@/lib/science/lineage/weighted-coancestry";

/**
 * Weighted coancestries from a small matrix Θ over the lots that still have offspring to come.
 *
 *     Θ(new, X) = a Σ w_A Θ(A, X)          a: share of the genes that came from the parent lots
 *
 * Quick where lots fall out of use soon after they came, however deep and tangled the lineage; AncestorTrace is quick where
 * many old lots stay in use. Both are exact. Memory: three squares over the lots in use at once.
 */
export class CoancestryInUse implements CoancestryAmongParents {
  /** one square a recursion: θ, then t and the excess of k where any pollen is foreign (else t = θ and nothing exceeds) */
  private readonly squares: readonly Float64Array[];
  /** by slot: its lot's rank, or -1 */
  private readonly holder: Int32Array;
  /** one row at work */
  private readonly mean: Float64Array;

  constructor(
    private readonly pedigree: Pedigree,
    private readonly figures: LineageFigures,
    private readonly use: LotsInUse,
  ) {
    const length = recursionsNeeded(pedigree);
    this.squares = Array.from({ length }, () => new Float64Array(use.slots * use.slots));
    this.holder = new Int32Array(use.slots).fill(-1);
    this.mean = new Float64Array(use.slots);
  }

  amongParents(rank: number): WeightedCoancestry {
    const [all, native, both] = this.squares;
    const coancestry = all ? this.weighted(all, rank) : 0;
    return {
      coancestry,
      nativeIdentical: native ? this.weighted(native, rank) : coancestry,
      bothNativeExcess: both ? this.weighted(both, rank) : 0,
    };
  }

  private weighted(square: Float64Array, rank: number): number {
    const { firstParent, parentRank, parentShare } = this.pedigree;
    const from = firstParent[rank] as number;
    const to = firstParent[rank + 1] as number;
    let sum = 0;
    for (let a = from; a < to; a++) {
      const row = this.slot(parentRank[a] as number) * this.use.slots;
      let inRow = 0;
      for (let b = from; b < to; b++) {
        inRow += (parentShare[b] as number) * (square[row + this.slot(parentRank[b] as number)] as number);
      }
      sum += (parentShare[a] as number) * inRow;
    }
    return sum;
  }

  settled(rank: number): void {
    const slot = this.slot(rank);
    if (slot >= 0) {
      const [all, native, both] = this.squares;
      if (all) this.fill(all, rank, slot, this.figures.coancestry[rank] as number);
      if (native) this.fill(native, rank, slot, this.figures.nativeIdentical[rank] as number);
      if (both) this.fill(both, rank, slot, this.figures.bothNativeExcess[rank] as number);
      this.holder[slot] = rank;
    }
    for (const done of this.use.lastOffspringOf.get(rank) ?? []) this.holder[this.slot(done)] = -1;
  }

  /** Writes the new lot's row and column. */
  private fill(square: Float64Array, rank: number, slot: number, own: number): void {
    const { mean, holder } = this;
    const { firstParent, parentRank, parentShare } = this.pedigree;
    const { slots } = this.use;
    mean.fill(0);
    for (let link = firstParent[rank] as number; link < (firstParent[rank + 1] as number); link++) {
      const share = (this.figures.passing[rank] as number) * (parentShare[link] as number);
      const parentRow = this.slot(parentRank[link] as number) * slots;
      for (let x = 0; x < slots; x++) mean[x] = (mean[x] as number) + share * (square[parentRow + x] as number);
    }
    square.set(mean, slot * slots);
    for (let x = 0; x < slots; x++) {
      if ((holder[x] as number) >= 0) square[x * slots + slot] = mean[x] as number;
    }
    square[slot * slots + slot] = own;
  }

  private slot(rank: number): number {
    return this.use.slotOf[rank] as number;
  }
}

/** Without foreign pollen all genes are native, and one recursion tells all three. */
export function recursionsNeeded({ lots }: Pedigree): 1 | 3 {
  return lots.some((lot) => (lot.kind === "grow-out" || lot.kind === "harvest") && (lot.foreignPollen ?? 0) > 0)
    ? 3
    : 1;
}

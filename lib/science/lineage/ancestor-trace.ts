import type { LineageFigures } from "@/lib/science/lineage/figures";
import type { Pedigree } from "@/lib/science/lineage/pedigree";
import { RankQueue } from "@/lib/science/lineage/rank-queue";
import type { CoancestryAmongParents, WeightedCoancestry } from "@/lib/science/lineage/weighted-coancestry";

/**
 * Weighted coancestries by following the genes back.
 *
 *     Θ = T · D · Tᵀ        w'Θw = Σ_k v_k² D_k  with v = w'T
 *
 * T_Xk: the share of lot X's genes that passed through lot k; D_k: the coancestry that arose in lot k. v is followed from
 * the newest ancestor to the oldest. Where a single lot is left, all that lies behind it is in its own known θ, and the
 * trace stops; so a line of single parents costs one step a lot. Memory: a few numbers a lot.
 * Source: the factoring of a relationship matrix, Henderson 1976, Biometrics 32:69-83, here of lots in place of animals.
 */
export class AncestorTrace implements CoancestryAmongParents {
  private readonly coefficient: Float64Array;
  private readonly waiting: RankQueue;

  constructor(
    private readonly pedigree: Pedigree,
    private readonly figures: LineageFigures,
  ) {
    this.coefficient = new Float64Array(pedigree.lots.length);
    this.waiting = new RankQueue(pedigree.lots.length);
  }

  amongParents(rank: number): WeightedCoancestry {
    const { coefficient, waiting } = this;
    const { firstParent, parentRank, parentShare } = this.pedigree;
    const { arisen, passing, coancestry, nativeIdentical, bothNativeExcess } = this.figures;
    let theta = 0;
    let native = 0;
    let excess = 0;
    let lot = rank;
    let passed = 1;
    do {
      for (let link = firstParent[lot] as number; link < (firstParent[lot + 1] as number); link++) {
        const parent = parentRank[link] as number;
        waiting.add(parent);
        coefficient[parent] = (coefficient[parent] as number) + passed * (parentShare[link] as number);
      }
      lot = waiting.takeNewest();
      const v = coefficient[lot] as number;
      coefficient[lot] = 0;
      if (waiting.count === 0) {
        theta += v * v * (coancestry[lot] as number);
        native += v * v * (nativeIdentical[lot] as number);
        excess += v * v * (bothNativeExcess[lot] as number);
      } else {
        theta += v * v * (arisen[3 * lot] as number);
        native += v * v * (arisen[3 * lot + 1] as number);
        excess += v * v * (arisen[3 * lot + 2] as number);
        passed = v * (passing[lot] as number);
      }
    } while (waiting.count > 0);
    return { coancestry: theta, nativeIdentical: native, bothNativeExcess: excess };
  }

  settled(): void {
    // the figures themselves are all that a later trace reads
  }
}

import { coancestryOfPairs } from "@/lib/science/lineage/coancestry-of-pair";
import { followLots } from "@/lib/science/lineage/follow-lots";
import { founderParts } from "@/lib/science/lineage/founder-parts";
import { linesOfDescent } from "@/lib/science/lineage/lines-of-descent";
import type { Pedigree } from "@/lib/science/lineage/pedigree";

/** One lot that could go into a mix. */
export interface MixLot {
  /** F */
  readonly inbreeding: number;
  /** share of the genes that come from the founders */
  readonly native: number;
  readonly shortestLine: number;
  readonly longestLine: number;
  /** part of the genes by the founder's id */
  readonly founders: Readonly<Record<string, number>>;
}

/** All that the figures of any mix of some lots follow from: plain numbers, so that they can be sent to where the shares change. */
export interface MixGround {
  readonly lots: readonly MixLot[];
  /** Θ, own θ on the diagonal, in the order of the lots */
  readonly coancestry: readonly (readonly number[])[];
  /** t and the excess of k; null where no foreign pollen came in: then t = Θ, and all genes are native */
  readonly natives: {
    readonly identical: readonly (readonly number[])[];
    readonly excess: readonly (readonly number[])[];
  } | null;
}

/** The ground of a mix of some lots of a pedigree, in the order in which they are named; each id must be one of its lots. */
export function groundOfMix(checked: Pedigree, ids: readonly string[]): MixGround {
  const figures = followLots(checked);
  const ranks = ids.map((id) => checked.rankOf.get(id) as number);
  const lines = linesOfDescent(checked);
  const partsOf = founderParts(checked, figures);
  const lots = ranks.map((rank) => ({
    inbreeding: figures.inbreeding[rank] as number,
    native: figures.native[rank] as number,
    shortestLine: lines.shortest[rank] as number,
    longestLine: lines.longest[rank] as number,
    founders: Object.fromEntries([...partsOf(rank)].map(([founder, part]) => [checked.lots[founder]?.id ?? "", part])),
  }));
  const square = (of: "coancestry" | "nativeIdentical" | "bothNativeExcess") => {
    const between = coancestryOfPairs(checked, figures, of);
    const rows = ranks.map(() => new Array<number>(ranks.length).fill(0));
    ranks.forEach((a, i) => {
      for (let j = i; j < ranks.length; j++) {
        const value = between(a, ranks[j] as number);
        (rows[i] as number[])[j] = value;
        (rows[j] as number[])[i] = value;
      }
    });
    return rows;
  };
  const foreign = lots.some((lot) => lot.native < 1);
  return {
    lots,
    coancestry: square("coancestry"),
    natives: foreign ? { identical: square("nativeIdentical"), excess: square("bothNativeExcess") } : null,
  };
}

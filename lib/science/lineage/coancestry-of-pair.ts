import type { LineageFigures } from "@/lib/science/lineage/figures";
import type { Pedigree } from "@/lib/science/lineage/pedigree";
import { RankQueue } from "@/lib/science/lineage/rank-queue";

/** What is followed: Θ itself, the part of it that is native (t), the excess of both native over n·n (k − n·n). */
const recursions = ["coancestry", "nativeIdentical", "bothNativeExcess"] as const;

/**
 * Θ(A, B): the chance that a gene of a seed of one lot and a gene of a seed of another are the same by descent.
 *
 *     Θ(A, B) = Σ_k T_Ak T_Bk D_k          (see AncestorTrace; Θ(A, A) means θ_A)
 *
 * Both lots' genes are followed back together; t and the excess of k in the same way. Takes and gives ranks of one pedigree, a probability
 * from 0 to 1 (an excess, which may be below 0, of one).
 */
export function coancestryOfPairs(
  { lots, firstParent, parentRank, parentShare }: Pedigree,
  figures: LineageFigures,
  of: (typeof recursions)[number] = "coancestry",
): (a: number, b: number) => number {
  const { arisen, passing } = figures;
  const own = figures[of];
  const place = recursions.indexOf(of);
  const ofA = new Float64Array(lots.length);
  const ofB = new Float64Array(lots.length);
  const waiting = new RankQueue(lots.length);

  return (a, b) => {
    if (a === b) return own[a] as number;
    ofA[a] = 1;
    ofB[b] = 1;
    waiting.add(a);
    waiting.add(b);
    let theta = 0;
    while (waiting.count > 0) {
      const lot = waiting.takeNewest();
      const x = ofA[lot] as number;
      const y = ofB[lot] as number;
      ofA[lot] = 0;
      ofB[lot] = 0;
      if (waiting.count === 0) theta += x * y * (own[lot] as number);
      else {
        theta += x * y * (arisen[3 * lot + place] as number);
        const passed = passing[lot] as number;
        for (let link = firstParent[lot] as number; link < (firstParent[lot + 1] as number); link++) {
          const parent = parentRank[link] as number;
          const share = passed * (parentShare[link] as number);
          waiting.add(parent);
          ofA[parent] = (ofA[parent] as number) + x * share;
          ofB[parent] = (ofB[parent] as number) + y * share;
        }
      }
    }
    return theta;
  };
}

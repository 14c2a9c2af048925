import type { Pedigree } from "@/lib/science/lineage/pedigree";
import { grownPool } from "./grown-pool";
import { founderPool, mixedPool, type SeedPool } from "./seed-pool";
import type { SeededDraws } from "./seeded-draws";

/** The pools of all lots of one run, by rank. */
export function poolsOfRun({ lots, firstParent, parentRank, parentShare }: Pedigree, draws: SeededDraws): SeedPool[] {
  let genes = 0;
  const newGene = () => ++genes;
  const pools: SeedPool[] = [];
  lots.forEach((lot, rank) => {
    if (lot.kind === "founder") {
      pools.push(founderPool(lot.inbreeding ?? 0, lot.coancestry ?? 0, newGene, draws));
      return;
    }
    const parts: { pool: SeedPool; share: number }[] = [];
    for (let link = firstParent[rank] ?? 0; link < (firstParent[rank + 1] ?? 0); link++) {
      parts.push({ pool: pools[parentRank[link] ?? 0] as SeedPool, share: parentShare[link] ?? 0 });
    }
    pools.push(lot.kind === "grow-out" ? grownPool(lot, parts, newGene, draws) : mixedPool(parts, draws));
  });
  return pools;
}

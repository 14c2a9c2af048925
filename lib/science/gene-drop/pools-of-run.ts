import { isCross } from "@/lib/science/lineage/lots";
import type { Pedigree } from "@/lib/science/lineage/pedigree";
import { grownPool, type RaisedPlants, raisedPlants } from "./grown-pool";
import { founderPool, mixedPool, type SeedPool } from "./seed-pool";
import type { SeededDraws } from "./seeded-draws";

/** The pools of all lots of one run, by rank. Plants that were harvested more than once are raised once; the parts of chance are no seed. */
export function poolsOfRun({ lots, firstParent, parentRank, parentShare }: Pedigree, draws: SeededDraws): SeedPool[] {
  let genes = 0;
  const newGene = () => ++genes;
  const pools: SeedPool[] = [];
  const raised = new Map<number, RaisedPlants>();
  lots.forEach((lot, rank) => {
    if (lot.kind === "founder") {
      pools.push(founderPool(lot.inbreeding ?? 0, lot.coancestry ?? 0, newGene, draws));
      return;
    }
    const parts: { pool: SeedPool; share: number }[] = [];
    for (let link = firstParent[rank] ?? 0; link < (firstParent[rank + 1] ?? 0); link++) {
      parts.push({ pool: pools[parentRank[link] ?? 0] as SeedPool, share: parentShare[link] ?? 0 });
    }
    if (lot.kind === "harvest") {
      const of = parentRank[firstParent[rank] ?? 0] ?? 0;
      const plants = raised.get(of) ?? raisedPlants(lot, parts.slice(0, 1), draws);
      raised.set(of, plants);
      pools.push(grownPool(lot, plants, newGene, draws));
    } else if (lot.kind === "grow-out") {
      const side = (role: string) => parts.filter((_, place) => lot.parents[place]?.role === role);
      const plants = isCross(lot)
        ? raisedPlants(lot, side("pollen parent"), draws, side("seed parent"))
        : raisedPlants(lot, parts, draws);
      pools.push(grownPool(lot, plants, newGene, draws));
    } else pools.push(mixedPool(parts, draws));
  });
  return pools;
}

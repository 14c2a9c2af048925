import type { SeededDraws } from "./seeded-draws";

/** A gene of the founders, by number; two genes with one number are one by descent. */
export type Gene = number;

/** Gives a gene that no other is one with. */
export type NewGene = () => Gene;

/** The seed of a lot in one run of the simulation: endless, once the plants that gave it are known. */
export interface SeedPool {
  /** share of the pool's genes that are a gene; what stands alone is left out */
  readonly genes: ReadonlyMap<Gene, number>;
  /** chance that the two genes of one seed are one */
  readonly inbreeding: number;
  /** the two genes of a seed drawn from it */
  draw(): readonly [Gene, Gene];
}

/** Chance that genes of two seeds, one of each pool, are one by descent; of one pool with itself, of two distinct seeds. */
export function sameGene(one: SeedPool, other: SeedPool): number {
  const [few, many] = one.genes.size <= other.genes.size ? [one.genes, other.genes] : [other.genes, one.genes];
  let sum = 0;
  for (const [gene, share] of few) sum += share * (many.get(gene) ?? 0);
  return sum;
}

/** Seed of several pools mixed, the shares of sum 1. */
export function mixedPool(
  parts: readonly { readonly pool: SeedPool; readonly share: number }[],
  draws: SeededDraws,
): SeedPool {
  const genes = new Map<Gene, number>();
  for (const { pool, share } of parts) {
    for (const [gene, mass] of pool.genes) genes.set(gene, (genes.get(gene) ?? 0) + share * mass);
  }
  return {
    genes,
    inbreeding: parts.reduce((sum, { pool, share }) => sum + share * pool.inbreeding, 0),
    draw: () => drawnFrom(parts, draws),
  };
}

/** A seed of one of several pools, each as likely as its share. */
export function drawnFrom(
  parts: readonly { readonly pool: SeedPool; readonly share: number }[],
  draws: SeededDraws,
): readonly [Gene, Gene] {
  let left = draws.next();
  for (const { pool, share } of parts) {
    left -= share;
    if (left < 0) return pool.draw();
  }
  return (parts.at(-1) as { pool: SeedPool }).pool.draw();
}

/**
 * A founder's pool with inbreeding F and coancestry θ. Where F ≥ θ each gene is the lot's common one with chance √θ, and a seed is one gene
 * twice with chance (F − θ)/(1 − θ). Where θ > F the whole lot is one gene with chance F; else its seeds have one gene of each of two halves,
 * each with a common gene, so that none is inbred. Both give F and θ in expectation.
 */
export function founderPool(inbreeding: number, coancestry: number, newGene: NewGene, draws: SeededDraws): SeedPool {
  if (inbreeding >= coancestry) {
    const common = newGene();
    const share = Math.sqrt(coancestry);
    const twice = coancestry === 1 ? 0 : (inbreeding - coancestry) / (1 - coancestry);
    const gene = () => (draws.chance(share) ? common : newGene());
    return {
      genes: new Map(share > 0 ? [[common, share]] : []),
      inbreeding,
      draw: () => {
        const first = gene();
        return [first, draws.chance(twice) ? first : gene()];
      },
    };
  }
  const [one, other] = [newGene(), newGene()];
  if (draws.chance(inbreeding)) return { genes: new Map([[one, 1]]), inbreeding: 1, draw: () => [one, one] };
  const share = Math.sqrt((2 * (coancestry - inbreeding)) / (1 - inbreeding));
  const of = (common: Gene) => (draws.chance(share) ? common : newGene());
  return {
    genes: new Map([
      [one, share / 2],
      [other, share / 2],
    ]),
    inbreeding: 0,
    draw: () => [of(one), of(other)],
  };
}

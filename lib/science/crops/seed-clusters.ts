/** Crops whose "seed" is a cluster of several fruits, so that several plants come up of one. */
const inClusters: ReadonlySet<string> = new Set(["beet", "chard", "sugar-beet"]);

/**
 * Whether more plants than seeds sown can come up: a beet's seed ball holds several seeds (multigerm).
 * Source: general botany of Beta; single-germ varieties are counted with the others.
 */
export function sownInClusters(cropKey: string): boolean {
  return inClusters.has(cropKey);
}

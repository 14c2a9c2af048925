/** Chances below this part of the likeliest add less than 1e-15 over all counts. */
const NEGLIGIBLE = 1e-22;

/** A run of neighbouring counts. */
export interface CountRun {
  readonly from: number;
  readonly to: number;
}

/**
 * The counts that a group of `drawn` seeds can have, of `total` germinated among `seeds`, save those of no weight:
 * the hypergeometric chance followed outward from its mode.
 */
export function likelyCounts(seeds: number, drawn: number, total: number): CountRun {
  const least = Math.max(0, total - (seeds - drawn));
  const most = Math.min(drawn, total);
  const mode = Math.min(most, Math.max(least, Math.floor(((drawn + 1) * (total + 1)) / (seeds + 2))));
  const ratio = (count: number) =>
    ((drawn - count) / (count + 1)) * ((total - count) / (seeds - drawn - total + count + 1));
  let from = mode;
  for (let chance = 1; from > least && chance > NEGLIGIBLE; from--) chance /= ratio(from - 1);
  let to = mode;
  for (let chance = 1; to < most && chance > NEGLIGIBLE; to++) chance *= ratio(to);
  return { from, to };
}

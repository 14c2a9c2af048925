import type { SeedCount } from "../lots/live-seeds";

/** What a jar holds. Null is not known. */
export interface JarBefore {
  readonly grams: number | null;
  readonly seeds: SeedCount | null;
  readonly live: SeedCount | null;
  readonly thousandSeedGrams: number | null;
  /** above the reserve */
  readonly free: SeedCount | null;
}

/** What is left in a jar, and the part of it that was taken (0..1; null where the jar's weight is not known). */
export interface JarAfter extends JarBefore {
  readonly takenShare: number | null;
}

/** What a house's scales do not show, in grams. */
const notShown = 0.005;

/** Less than this is no seed, in grams: what scales do not show, and of seed as fine as dust half a seed. */
export function noSeedGrams(thousandSeedGrams: number | null): number {
  return thousandSeedGrams === null ? notShown : Math.min(notShown, thousandSeedGrams / 2000);
}

/** Whether a jar holds nothing, by its ledger; one of which nobody knows what is in it is not empty. */
export function isEmpty(grams: number | null, thousandSeedGrams: number | null): boolean {
  return grams !== null && grams < noSeedGrams(thousandSeedGrams);
}

/** An amount in grams: seeds × thousand-seed weight / 1000. Null where seeds have no weight here. */
export function gramsOfAmount(amount: number, unit: "g" | "seeds", thousandSeedGrams: number | null): number | null {
  if (unit === "g") return amount;
  return thousandSeedGrams === null ? null : (amount * thousandSeedGrams) / 1000;
}

/**
 * The jar once so many grams are out of it: seeds and living seeds fall in the share that is taken, what is free by the seeds taken, at
 * least to nothing. A hand takes living and dead seed alike. More than is there leaves nothing.
 */
export function afterGiving(jar: JarBefore, grams: number): JarAfter {
  if (jar.grams === null) return { ...jar, seeds: null, live: null, free: null, takenShare: null };
  const left = Math.max(0, jar.grams - grams);
  const empty = isEmpty(left, jar.thousandSeedGrams);
  const share = jar.grams <= 0 || empty ? 1 : grams / jar.grams;
  const parted = (count: SeedCount | null) => count && scaled(count, 1 - share);
  const taken = jar.seeds && scaled(jar.seeds, share);
  return {
    ...jar,
    grams: empty ? 0 : left,
    seeds: parted(jar.seeds),
    live: parted(jar.live),
    free: jar.free && (taken ? less(jar.free, taken) : null),
    takenShare: share,
  };
}

function scaled(count: SeedCount, by: number): SeedCount {
  return {
    ...count,
    value: count.value === null ? null : count.value * by,
    low: count.low * by,
    high: count.high * by,
  };
}

/** Less the fewest and the most that were taken, end by end, since both ends rest on the same seed weight. */
function less(free: SeedCount, taken: SeedCount): SeedCount {
  const cut = (held: number, out: number) => Math.max(0, held - out);
  return {
    ...free,
    value: free.value === null || taken.value === null ? null : cut(free.value, taken.value),
    low: cut(free.low, taken.low),
    high: cut(free.high, taken.high),
  };
}

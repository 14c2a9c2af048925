/** A number of seeds: the likeliest, its two ends, and whether it rests on what was counted or on what is usual. */
export interface SeedCount {
  /** null where only the ends are known */
  readonly value: number | null;
  readonly low: number;
  readonly high: number;
  readonly grade: "counted" | "assumed";
}

export interface SeedsPerGram {
  readonly min: number | null;
  readonly max: number | null;
}

/**
 * Seeds in a weight of seed: grams × 1000 / thousand-seed weight. Without the lot's own seed weight the crop's usual range of seeds a gram
 * gives two ends, and no likeliest number. Null where the weight is not known, or where nothing says how heavy a seed is.
 */
export function seedsIn(
  grams: number | null,
  thousandSeedGrams: number | null,
  perGram: SeedsPerGram,
): SeedCount | null {
  if (grams === null) return null;
  const held = Math.max(0, grams);
  if (held === 0) return { value: 0, low: 0, high: 0, grade: "counted" };
  if (thousandSeedGrams !== null) {
    const value = (held / thousandSeedGrams) * 1000;
    return { value, low: value, high: value, grade: "counted" };
  }
  if (perGram.min === null || perGram.max === null) return null;
  return { value: null, low: held * perGram.min, high: held * perGram.max, grade: "assumed" };
}

/**
 * Living seeds: seeds × germination of the last test, from seeds × the low end of its 95 % interval to seeds × its high end. Null where
 * the lot was never tested: not known, whatever lies in the jar. An empty jar holds none.
 */
export function liveSeeds(
  seeds: SeedCount | null,
  test: { readonly germination: number; readonly low: number; readonly high: number } | null,
): SeedCount | null {
  if (seeds === null) return null;
  if (seeds.high === 0) return seeds;
  if (test === null) return null;
  return {
    value: seeds.value === null ? null : seeds.value * test.germination,
    low: seeds.low * test.low,
    high: seeds.high * test.high,
    grade: seeds.grade,
  };
}

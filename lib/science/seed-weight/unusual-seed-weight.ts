/** Seed weight this many times off the crop's is worth a look. */
const FACTOR = 10;

/** The usual weight of a thousand seeds of a crop, grams. */
export interface UsualSeedWeight {
  readonly lightest: number;
  readonly heaviest: number;
}

/**
 * The crop's usual thousand-seed weight (1000 / seeds per gram) where the given one lies more than ten times above or below it; else null,
 * also where the crop's is not known. Source: a slip of the decimal point is ten times.
 */
export function unusualSeedWeight(
  thousandSeedGrams: number,
  { seedsPerGramMin, seedsPerGramMax }: { seedsPerGramMin: number | null; seedsPerGramMax: number | null },
): UsualSeedWeight | null {
  if (!seedsPerGramMin || !seedsPerGramMax) return null;
  const usual = { lightest: 1000 / seedsPerGramMax, heaviest: 1000 / seedsPerGramMin };
  const fits = thousandSeedGrams <= usual.heaviest * FACTOR && thousandSeedGrams >= usual.lightest / FACTOR;
  return fits ? null : usual;
}

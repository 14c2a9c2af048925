import { seedsAbout, seedsCounted, span } from "@/lib/display/numbers";
import type { SeedCount } from "@/lib/registry/lots/live-seeds";

/** A number of seeds as a person says it: "about 360 seeds, 273 to 395", "100–400 seeds", "no seed". */
export function seedsInWords(count: SeedCount | null): string {
  if (count === null) return "unknown";
  if (count.high === 0) return "no seed";
  const { value, low, high } = count;
  if (low === high) return seedsAbout(value ?? low);
  const ends = wholeEnds(count);
  if (value === null) return span(ends.low, ends.high, "seeds");
  return `${seedsAbout(value)}, ${span(ends.low, ends.high)}`;
}

/** The ends in whole seeds, outwards; an end that is the likeliest number is rounded as that is: all that live are no more than there are. */
function wholeEnds({ value, low, high }: SeedCount): { low: number; high: number } {
  return {
    low: low === value ? Math.round(low) : Math.floor(low),
    high: high === value ? Math.round(high) : Math.ceil(high),
  };
}

/** Seeds as the jar has them: whole, and worked out of grams no finer than the words beside it say. */
export function seedsInJar(count: SeedCount | null): SeedCount | null {
  if (count === null || count.low !== count.high) return count === null ? null : { ...count, ...wholeEnds(count) };
  const whole = count.low < 1000 ? Math.round(count.low) : Number(count.low.toPrecision(3));
  return { ...count, value: count.value === null ? null : whole, low: whole, high: whole };
}

/** Only the ends, for a column of a table: "273–395". */
export function seedsSpan(count: SeedCount): string {
  if (count.high === 0) return "0";
  if (count.low === count.high) return span(count.low, count.low);
  const ends = wholeEnds(count);
  return span(ends.low, ends.high);
}

/** A whole number of seeds that a rule counts out: "638 seeds". */
export function seedsOfRule(seeds: number): string {
  return seedsCounted(seeds);
}

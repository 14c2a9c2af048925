import { seedsAbout, seedsCounted, span } from "@/lib/display/numbers";
import type { SeedCount } from "@/lib/registry/lots/live-seeds";

/** A number of seeds as a person says it: "about 360 seeds, 273 to 395", "100–400 seeds", "no seed". */
export function seedsInWords(count: SeedCount | null): string {
  if (count === null) return "unknown";
  if (count.high === 0) return "no seed";
  const { value, low, high } = count;
  if (low === high) return seedsAbout(value ?? low);
  if (value === null) return span(Math.floor(low), Math.ceil(high), "seeds");
  return `${seedsAbout(value)}, ${span(Math.floor(low), Math.ceil(high))}`;
}

/** Only the ends, for a column of a table: "273–395". */
export function seedsSpan(count: SeedCount): string {
  if (count.high === 0) return "0";
  if (count.low === count.high) return span(count.low, count.low);
  return span(Math.floor(count.low), Math.ceil(count.high));
}

/** A whole number of seeds that a rule counts out: "638 seeds". */
export function seedsOfRule(seeds: number): string {
  return seedsCounted(seeds);
}

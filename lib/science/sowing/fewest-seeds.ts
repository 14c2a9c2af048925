import { normalQuantile } from "@/lib/science/distributions/normal";
import { chanceOfPlants, type SeedQuality } from "@/lib/science/sowing/chance-of-plants";
import { reaches } from "@/lib/science/whole-steps";

/** Beyond this no number of seeds is looked for. */
export const MOST_SEEDS = 10_000_000;

/** Relative: above the rounding of chanceOfPlants (at most 4e-14 in 13,000 sowings), below what one seed more adds to the chance. */
const ROUNDING_OF_CHANCE = 1e-12;

export interface FewestSeeds {
  readonly seeds: number;
  /** the chance that they give the plants wanted */
  readonly probability: number;
}

/**
 * The smallest number of seeds that gives the plants wanted with this confidence, or null above ten million.
 * More seeds never lower the chance, so the number is bracketed, then closed in on along a straight line of normal deviates over
 * the logarithm of the number. A chance that is the confidence but for rounding reaches it: 119 seeds for 60 plants, 5 of 10 germinated, at
 * 0.5, which is exactly their chance.
 */
export function fewestSeeds(plants: number, confidence: number, quality: SeedQuality): FewestSeeds | null {
  const chance = (seeds: number) => chanceOfPlants(seeds, plants, quality);
  let [low, atLow] = [plants - 1, 0];
  let high = Math.min(MOST_SEEDS, firstGuess(plants, confidence, quality));
  let atHigh = chance(high);
  while (!reaches(atHigh, confidence, ROUNDING_OF_CHANCE)) {
    if (high >= MOST_SEEDS) return null;
    [low, atLow] = [high, atHigh];
    high = Math.min(MOST_SEEDS, Math.ceil(high * (high - plants < plants ? 1.1 : 2)) + 1);
    atHigh = chance(high);
  }
  for (let round = 0; high - low > 1; round++) {
    const guess = round % 4 === 3 ? (low + high) / 2 : onTheLine([low, atLow], [high, atHigh], confidence);
    const seeds = Math.min(high - 1, Math.max(low + 1, Math.round(guess)));
    const at = chance(seeds);
    if (reaches(at, confidence, ROUNDING_OF_CHANCE)) [high, atHigh] = [seeds, at];
    else [low, atLow] = [seeds, at];
  }
  return { seeds: high, probability: atHigh };
}

/** From the mean and the spread of the plants alone. */
function firstGuess(plants: number, confidence: number, { normal, sown, emergence }: SeedQuality): number {
  const mean = (emergence * (normal + 0.5)) / (sown + 1);
  const spread = emergence * Math.sqrt(((normal + 0.5) * (sown - normal + 0.5)) / ((sown + 1) ** 2 * (sown + 2)));
  const z = Math.max(0, normalQuantile(confidence));
  const low = Math.max(mean - z * spread, mean / 4);
  const seeds = plants / low;
  return Math.max(plants, Math.ceil(seeds + (z * Math.sqrt(seeds * low * (1 - low)) * 0.5) / low));
}

function onTheLine([low, atLow]: [number, number], [high, atHigh]: [number, number], confidence: number): number {
  const [from, to, sought] = [atLow, atHigh, confidence].map((chance) => normalQuantile(chance)) as [
    number,
    number,
    number,
  ];
  if (!Number.isFinite(from) || !Number.isFinite(to) || !(to > from)) return (low + high) / 2;
  const part = (sought - from) / (to - from);
  return Math.exp(Math.log(low) + part * (Math.log(high) - Math.log(low)));
}

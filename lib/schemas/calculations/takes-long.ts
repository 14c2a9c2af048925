/**
 * Whether a calculation may take longer than 50 ms, told from the size of its input before anything is worked out. The sizes are those at which
 * a plain computer took about that long (`npm run bench` prints how long each takes there); what is not listed is quick at any size that it takes, but
 * for an input of very much text. Told wrong, nothing fails: the answer only comes from the other place.
 */
export function takesLong(name: string, input: unknown): boolean {
  const size = sizes[name];
  if (size && isRecord(input) && size.of(input) > size.most) return true;
  return JSON.stringify(input ?? null).length > MOST_TEXT;
}

/** Characters of JSON: some two thousand plants or lots. */
const MOST_TEXT = 200_000;

interface Size {
  /** what makes the work grow, counted */
  readonly of: (input: Readonly<Record<string, unknown>>) => number;
  /** so much of it is still quick */
  readonly most: number;
}

export const sizes: Readonly<Record<string, Size>> = {
  // plants grown in all runs together
  "gene-drop": { of: ({ lots, replicates }) => numberOf(replicates) * plantsOf(lots), most: 20_000 },
  // tests: each is asked at every point of the prior
  "viability-forecast": { of: ({ tests }) => countOf(tests), most: 20 },
  // scores
  "choose-plants": { of: ({ plants, traits }) => countOf(plants) * countOf(traits), most: 5_000 },
  // candidates, and with a smallest share which of them go together: that grows much faster
  "blend-advice": {
    of: ({ candidates, minShare }) => countOf(candidates) * (numberOf(minShare) > 0 ? 3 : 1),
    most: 40,
  },
  lineage: { of: ({ lots }) => countOf(lots), most: 1_000 },
  // seeds to be looked through for the exact chance of the range
  "germination-test": { of: ({ replicates }) => sumOf(replicates, "sown"), most: 3_000 },
  "realised-heritability": { of: ({ cycles }) => countOf(cycles), most: 100 },
  "pollen-risk": { of: ({ sources }) => countOf(sources), most: 100 },
  "sowing-count": { of: ({ plantsWanted }) => numberOf(plantsWanted), most: 5_000 },
};

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function countOf(list: unknown): number {
  return Array.isArray(list) ? list.length : 0;
}

function numberOf(value: unknown): number {
  return typeof value === "number" && value > 0 ? value : 0;
}

function sumOf(list: unknown, key: string): number {
  return Array.isArray(list) ? list.reduce((sum, each) => sum + (isRecord(each) ? numberOf(each[key]) : 0), 0) : 0;
}

function plantsOf(lots: unknown): number {
  return Math.max(sumOf(lots, "pollenParents") + sumOf(lots, "seedParents"), countOf(lots));
}

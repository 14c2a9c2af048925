import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

export interface ValueOfYear {
  readonly year: number;
  readonly value: number;
}

export interface RankTrend {
  /** pairs that rise less pairs that fall */
  readonly s: number;
  /** exact, two-sided; null where two years have one value */
  readonly pValue: number | null;
  /** the middle of all slopes between two years, a year */
  readonly slope: number;
}

/** Below so many years no line is drawn. */
export const yearsForTrend = 4;
/** Above it the exact chance is worked out of numbers too large to be exact. */
const mostYears = 20;

/**
 * Whether a value moved one way over the years, by ranks, so that no single year decides.
 *
 *     S = Σ sign(x_j − x_i) over i < j;  p = chance of an S as far from 0 or farther, all orders alike likely
 *     slope = median of (x_j − x_i)/(year_j − year_i)
 *
 * The counts of orders with so many falling pairs come from c(n, k) = Σ c(n − 1, k − j), j = 0..n − 1. Refused: fewer than four years (with four the smallest p is
 * 2/24), more than twenty, a year twice. Limits: years are taken as independent; one place, one scorer.
 * Example: 78 74 75 71 69: S −8, p 0.083. Source: Mann 1945, Econometrica 13:245-259; Kendall 1938, Biometrika 30:81-93; Sen 1968, JASA 63:1379-1389.
 */
export function rankTrend(given: readonly ValueOfYear[]): Outcome<RankTrend> {
  const years = [...given].sort((one, other) => one.year - other.year);
  if (years.length < yearsForTrend || years.length > mostYears) {
    const needed = `give between ${yearsForTrend} and ${mostYears} years`;
    return refused(refusal("years", ["years"], years.length, "years tell no trend here", needed));
  }
  const again = years.find(({ year }, at) => years[at + 1]?.year === year);
  if (again) return refused(refusal("year-twice", ["years"], again.year, "stands twice", "each year is given once"));
  let s = 0;
  let ties = false;
  const slopes: number[] = [];
  years.forEach((later, at) => {
    for (const earlier of years.slice(0, at)) {
      const rise = later.value - earlier.value;
      s += Math.sign(rise);
      ties ||= rise === 0;
      slopes.push(rise / (later.year - earlier.year));
    }
  });
  slopes.sort((a, b) => a - b);
  const middle = slopes.length / 2;
  const slope = ((slopes[Math.ceil(middle) - 1] ?? 0) + (slopes[Math.floor(middle)] ?? 0)) / 2;
  return accepted({ s, slope, pValue: ties ? null : exactChance(years.length, s) });
}

/** Chance of an S as far from 0 as this one or farther. */
function exactChance(n: number, s: number): number {
  let orders = [1];
  for (let years = 2; years <= n; years += 1) {
    const next = new Array<number>((years * (years - 1)) / 2 + 1).fill(0);
    orders.forEach((count, falls) => {
      for (let more = 0; more < years; more += 1) next[falls + more] = (next[falls + more] ?? 0) + count;
    });
    orders = next;
  }
  const pairs = (n * (n - 1)) / 2;
  const all = orders.reduce((sum, count) => sum + count, 0);
  const far = orders.reduce((sum, count, falls) => (Math.abs(pairs - 2 * falls) >= Math.abs(s) ? sum + count : sum), 0);
  return Math.min(1, far / all);
}

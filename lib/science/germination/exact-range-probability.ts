import { type CountRun, likelyCounts } from "@/lib/science/germination/likely-counts";

/** Chances of a run of counts: `values[i]` is that of count `from + i`. */
interface CountChances {
  readonly from: number;
  readonly values: Float64Array;
}

/**
 * The chance that replicates of one size differ by at least `range` seeds when all are alike, given how many germinated in all.
 *
 *     P(range ≤ r | T) = Σ_m [c(m, m + r) − c(m + 1, m + r)] / C(kn, T)
 *     c(a, b): coefficient of y^T in (Σ_{j=a..b} C(n, j) y^j)^k
 *
 * k replicates (2 or more) of n seeds, `total` T germinated; the counts are multivariate hypergeometric. To 1e-12 absolute:
 * counts of no weight are left out, the rest is a sum of products of positive numbers scaled to 1.
 * Example: 98, 85, 92, 90 of 100 (range 13, total 365): 0.0082.
 * Source: the exact count range as in the 2020 Seed Science Research update of Miles 1963, Proc. ISTA 28:525-686.
 */
export function exactRangeProbability(k: number, n: number, total: number, range: number): number {
  if (range <= 0) return 1;
  const { from, to } = likelyCounts(k * n, n, total);
  const chances = tilted(n, total / (k * n), { from, to });
  const power = powersAtTotal(k, n, total);
  const r = range - 1;
  let within = 0;
  for (let least = from; least <= to && k * least <= total; least++) {
    const most = Math.min(to, least + r);
    if (k * most < total) continue;
    within += power(part(chances, least, most)) - power(part(chances, least + 1, most));
  }
  return Math.min(1, Math.max(0, 1 - within / power(chances)));
}

/** C(n, j) pʲ(1 − p)ⁿ⁻ʲ over a run, scaled to sum 1: the factor pʲ cancels once the total is given. */
function tilted(n: number, p: number, { from, to }: CountRun): CountChances {
  const values = new Float64Array(to - from + 1);
  const middle = Math.min(to, Math.max(from, Math.floor((n + 1) * p)));
  const odds = p / (1 - p);
  values[middle - from] = 1;
  for (let j = middle; j < to; j++) values[j + 1 - from] = ((values[j - from] as number) * (n - j) * odds) / (j + 1);
  for (let j = middle; j > from; j--) values[j - 1 - from] = ((values[j - from] as number) * j) / ((n - j + 1) * odds);
  const sum = values.reduce((total, value) => total + value, 0);
  return { from, values: values.map((value) => value / sum) };
}

function part({ from, values }: CountChances, least: number, most: number): CountChances {
  return { from: least, values: values.subarray(least - from, Math.max(least, most + 1) - from) };
}

/** Gives the chance of the total in the k-th power of a run: halves are raised and joined, in which only likely sums are kept. */
function powersAtTotal(k: number, n: number, total: number): (chances: CountChances) => number {
  const likely = new Map<number, CountRun>();
  const likelyOf = (m: number): CountRun => {
    const run = likely.get(m) ?? likelyCounts(k * n, m * n, total);
    likely.set(m, run);
    return run;
  };
  return (chances) => {
    const raised = new Map<number, CountChances>([[1, chances]]);
    const raise = (m: number): CountChances => {
      const before = raised.get(m);
      if (before) return before;
      const half = m >> 1;
      const product = multiplied(raise(half), raise(m - half), likelyOf(m));
      raised.set(m, product);
      return product;
    };
    if (chances.values.length === 0) return 0;
    return atSum(raise(k >> 1), raise(k - (k >> 1)), total);
  };
}

function multiplied(a: CountChances, b: CountChances, keep: CountRun): CountChances {
  const from = Math.max(keep.from, a.from + b.from);
  const to = Math.min(keep.to, a.from + a.values.length - 1 + b.from + b.values.length - 1);
  const values = new Float64Array(Math.max(0, to - from + 1));
  for (let sum = from; sum <= to; sum++) values[sum - from] = atSum(a, b, sum);
  return { from, values };
}

function atSum(a: CountChances, b: CountChances, sum: number): number {
  const first = Math.max(a.from, sum - (b.from + b.values.length - 1));
  const last = Math.min(a.from + a.values.length - 1, sum - b.from);
  let chance = 0;
  for (let j = first; j <= last; j++) {
    chance += (a.values[j - a.from] as number) * (b.values[sum - j - b.from] as number);
  }
  return chance;
}

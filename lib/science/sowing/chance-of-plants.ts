import { betaCdf } from "@/lib/science/distributions/beta";
import { bellBounds } from "@/lib/science/quadrature/bell-bounds";
import { panelPoints } from "@/lib/science/quadrature/gauss-legendre";

/** What a germination test left, and the share of germinable seeds that come up. */
export interface SeedQuality {
  readonly normal: number;
  readonly sown: number;
  /** above 0, at most 1 */
  readonly emergence: number;
}

const PANELS = 8;
const RIGHT_ANGLE = Math.PI / 2;

/**
 * The chance that `seeds` sown give at least `plants`.
 *
 *     P = P( Binomial(m, e·π) ≥ N ),  π ~ Beta(x + ½, n − x + ½)
 *       = P( V ≤ e·π ),  V ~ Beta(N, m − N + 1)
 *
 * m seeds, N plants, e emergence, x of n germinated. With π = sin²θ both bells are smooth; the narrower is integrated over, the
 * other enters by its cdf. 96 points; to 1e-10 against exact sums. Result 0 to 1; 0 where m < N.
 * Source: beta-binomial prediction, e.g. Skellam 1948, J. R. Stat. Soc. B 10:257-261; V by the order statistics of m uniform draws.
 */
export function chanceOfPlants(seeds: number, plants: number, quality: SeedQuality): number {
  if (seeds < plants) return 0;
  const share = (plants - 0.5) / seeds;
  const roomAbove = Math.max(quality.emergence - share, 0) / (1 - share);
  const chance =
    seeds * roomAbove > quality.sown ? overPlants(seeds, plants, quality) : overQuality(seeds, plants, quality);
  return Math.min(1, Math.max(0, chance));
}

/** Integrates over what the test left of the germination. */
function overQuality(m: number, plants: number, { normal: x, sown: n, emergence }: SeedQuality): number {
  const logarithm = (theta: number) =>
    times(2 * x, Math.log(Math.sin(theta))) + times(2 * (n - x), Math.log(Math.cos(theta)));
  const top = Math.asin(Math.sqrt(x / n));
  const bounds = bellBounds(logarithm, top, 1 / Math.sqrt(n), [0, RIGHT_ANGLE]);
  return meanUnder(logarithm, top, bounds, (theta) =>
    betaCdf(emergence * Math.sin(theta) ** 2, plants, m - plants + 1),
  );
}

/** Integrates over V, the germination that just gives the plants wanted. */
function overPlants(m: number, plants: number, { normal: x, sown: n, emergence: e }: SeedQuality): number {
  const logarithm = (theta: number) =>
    (2 * plants - 1) * Math.log(Math.sin(theta)) +
    times(m - plants, Math.log1p(-e * Math.sin(theta) ** 2)) +
    Math.log(Math.cos(theta));
  const top = Math.asin(Math.sqrt(likeliestShare(m, plants, e)));
  const bounds = bellBounds(logarithm, top, 1 / Math.sqrt(m), [0, RIGHT_ANGLE]);
  const mean = meanUnder(logarithm, top, bounds, (theta) => betaCdf(Math.cos(theta) ** 2, n - x + 0.5, x + 0.5));
  return mean * betaCdf(e, plants, m - plants + 1);
}

/** sin²θ at the top of V's bell: the root of m e s² − [(N − ½)(1 + e) + (m − N) e + ½] s + N − ½ between 0 and 1. */
function likeliestShare(m: number, plants: number, e: number): number {
  const b = (plants - 0.5) * (1 + e) + (m - plants) * e + 0.5;
  const c = plants - 0.5;
  return Math.min(1, (2 * c) / (b + Math.sqrt(Math.max(0, b * b - 4 * m * e * c))));
}

function meanUnder(
  logarithm: (theta: number) => number,
  top: number,
  [from, to]: readonly [number, number],
  value: (theta: number) => number,
): number {
  const highest = logarithm(top);
  let total = 0;
  let sum = 0;
  for (const { x: theta, weight } of panelPoints(from, to, PANELS)) {
    const mass = weight * Math.exp(logarithm(theta) - highest);
    total += mass;
    sum += mass * value(theta);
  }
  return sum / total;
}

/** A factor of 0 leaves nothing, whatever stands beside it. */
function times(factor: number, logarithm: number): number {
  return factor === 0 ? 0 : factor * logarithm;
}

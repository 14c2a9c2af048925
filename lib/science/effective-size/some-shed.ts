import type { CountBounds, SharesKnown } from "@/lib/science/effective-size/effective-size-span";
import { fewestFor } from "@/lib/science/effective-size/ends-of-terms";
import { normalised } from "@/lib/science/effective-size/normalised";
import { listed } from "@/lib/science/effective-size/plot-parents";

/** Plants of which it is not known which of the seed parents shed pollen. */
export interface LoosePlants {
  readonly pollenParents: CountBounds;
  readonly seedParents: CountBounds;
  readonly seedShares?: SharesKnown;
}

/** What can be at most, whichever of the seed parents shed pollen. */
export interface MostWhereSomeShed {
  /** κ_m: two genes of two seeds came from one plant here */
  readonly fromOnePlant: number;
  /** α: a seed's two genes came from one plant */
  readonly insideOnePlant: number;
  /** s·Q: the part of all seed that came about by selfing */
  readonly selfed: number;
}

/**
 * Some seed parents shed pollen, and selfed at the rate s; the others, whose flowers were taken, did neither. N plants shed pollen, q are the seed
 * shares, Q that of the seed parents that shed, r = 1 − m, u = r(1 − sQ) what the N plants gave by outcross pollen.
 *
 *     c = ½((1 + s)q + u/N) of a seed parent that shed, ½q of one that did not, ½u/N of another plant that shed
 *     κ_m = Σ c² = ¼{ Σ q² + (2s + s²) Σ_shed q² + h(Q)/N },  h = 2r(1 + s)(1 − sQ)Q + r²(1 − sQ)²
 *     α = sQ + (1 − s) r Q/N
 *
 * The greatest: κ_m is convex in q and in s, so the shares lie at a corner (as many plants as can with the largest, one with the rest) and s at an
 * end; it falls with N and, since 1 + 2(2s + s²)Q + h′ > 0, with the number of seed parents of whom so many shed: the fewest of both. In Q it is
 * concave, so the greatest may lie where some shed and others not: each number of them is tried; of listed shares, of whom those with the
 * largest shed first, between two numbers too, which is never below the truth. α and sQ rise with those that shed.
 * The least: none shed, for Σ_shed q² ≥ Q²/N makes (2s + s²)Q² + h(Q) − h(0) ≥ 0 (see noneShed).
 * Takes what spanFaults found sound, not self-incompatible. Probabilities. Source: derived from the contributions of effectiveSize.
 */
export function mostWhereSomeShed(plants: LoosePlants, selfingRate: number, foreignPollen = 0): MostWhereSomeShed {
  const shares = plants.seedShares ?? "unknown";
  const fewest = Math.max(plants.seedParents.low, fewestFor(shares));
  const of = { s: selfingRate, r: 1 - foreignPollen, least: plants.pollenParents.low };
  const most = plants.pollenParents.high ?? Number.POSITIVE_INFINITY;
  const spread = typeof shares === "object" && "cv" in shares ? shares.cv : 0;
  if (spread > 0) return spreadOnly((1 + spread ** 2) / fewest, of);
  const corner = cornerOf(shares, fewest);
  const found = { fromOnePlant: 0, insideOnePlant: 0, selfed: 0 };
  const all = corner.shares.reduce((sum, q) => sum + q * q, 0);
  const take = (shed: number, q: number, squares: number) => {
    const n = Math.max(of.least, shed);
    found.fromOnePlant = Math.max(found.fromOnePlant, kappa(all, squares, q, n, of));
    found.insideOnePlant = Math.max(found.insideOnePlant, of.s * q + ((1 - of.s) * of.r * q) / n);
    found.selfed = Math.max(found.selfed, of.s * q);
  };
  let [q, squares] = [0, 0];
  take(0, 0, 0);
  for (const [place, share] of corner.shares.entries()) {
    if (place >= most) break;
    // the plant with the rest of the seed may have shed where one of the others did not
    const { rest } = corner;
    if (rest > 0) take(place + 1, q + rest, squares + rest * rest);
    if (corner.between) {
      const between = mostBetween(all, squares, q, share, Math.max(of.least, place + 1), of);
      found.fromOnePlant = Math.max(found.fromOnePlant, between);
    }
    [q, squares] = [q + share, squares + share * share];
    take(place + 1, q, squares);
  }
  return { ...found, fromOnePlant: Math.min(1, found.fromOnePlant) };
}

interface Rates {
  readonly s: number;
  readonly r: number;
  readonly least: number;
}

function kappa(all: number, squares: number, q: number, n: number, { s, r }: Rates): number {
  const u = r * (1 - s * q);
  return (all + (2 * s + s * s) * squares + (2 * (1 + s) * u * q + u * u) / n) / 4;
}

/** κ_m at its greatest while one more plant, of this share, goes over from not shedding to shedding. */
function mostBetween(all: number, squares: number, q: number, share: number, n: number, of: Rates): number {
  const at = (part: number) => kappa(all, squares + part * share * share, q + part * share, n, of);
  // a parabola through three places
  const [low, middle, high] = [at(0), at(0.5), at(1)];
  const bend = 2 * (low - 2 * middle + high);
  const slope = 4 * middle - 3 * low - high;
  const top = bend < 0 ? Math.min(1, Math.max(0, -slope / (2 * bend))) : 0;
  return Math.max(low, high, at(top));
}

/** The shares at their worst, the largest first; `rest`: that of the plant with what is left. */
function cornerOf(shares: SharesKnown, seedParents: number) {
  const list = shares === "unknown" || (typeof shares === "object" && "largest" in shares) ? undefined : listed(shares);
  if (list) return { shares: [...normalised(list)].sort((a, b) => b - a), rest: 0, between: true };
  if (shares === "equal" || (typeof shares === "object" && "cv" in shares))
    return { shares: alike(seedParents, 1 / seedParents), rest: 0, between: false };
  const largest = typeof shares === "object" && "largest" in shares ? shares.largest : 1;
  const many = Math.floor(1 / largest + 1e-9);
  const rest = Math.max(0, 1 - many * largest);
  const small = rest < 1e-12 ? 0 : rest;
  return { shares: [...alike(many, largest), ...(small > 0 ? [small] : [])], rest: small, between: false };
}

function alike(many: number, share: number): number[] {
  return Array.from({ length: many }, () => share);
}

/** Of a spread alone nothing says whose the large shares are: all squares may be of plants that shed, at whatever Q makes h greatest. */
function spreadOnly(all: number, of: Rates): MostWhereSomeShed {
  const { s, r, least } = of;
  const top = s > 0 ? (1 + s - r * s) / (s * (2 * (1 + s) - r * s)) : 1;
  const fromOnePlant = kappa(all, all, Math.min(1, top), least, of);
  return { fromOnePlant: Math.min(1, fromOnePlant), insideOnePlant: s + ((1 - s) * r) / least, selfed: s };
}

import { type Gram, leastMix, mixed } from "./least-mix";

/** What is said of a lot on the way through the mixes: in with at least the smallest share, out, or not settled. */
type Settled = "in" | "out" | null;

/** Work before the search is given up: choices looked through, times the square of the lots. A few seconds. */
export const MOST_WORK = 20_000_000;

/** Room for rounding where two mixes are compared. */
const AS_GOOD = 1e-13;

/**
 * The mix of least w'Gw with Σw = 1 where each share is 0 or at least `minShare`. Null where the search through the choices of lots would
 * be too long; never a mix that is not the best.
 *
 * Branch and bound: the best mix without the smallest share, among lots of which some are settled, is never worse than the best with it;
 * a lot that got a share between nothing and the smallest is tried out and in. A lot that is in no way better than another (its own θ and
 * its coancestry with every third at least as high) is in only where that other is.
 */
export function leastMixOfSome(gram: Gram, minShare: number, mostWork = MOST_WORK): Float64Array | null {
  if (minShare === 0) return leastMix(gram);
  const size = gram.length;
  const most = Math.floor(1 / minShare + 1e-9);
  const better = betterLots(gram);
  const scale = Math.max(...gram.map((row, i) => row[i] as number));
  let best: Float64Array = new Float64Array(size);
  let least = Number.POSITIVE_INFINITY;
  let choices = 0;

  const keep = (shares: Float64Array) => {
    const value = mixed(gram, shares);
    if (value >= least) return;
    least = value;
    best = shares;
  };

  const tryOut = (settled: Settled[]): boolean => {
    choices += 1;
    if (choices * size * size > mostWork) return false;
    const inside = settled.flatMap((each, i) => (each === "in" ? [i] : []));
    if (inside.length > most) return true;
    const open = inside.length === most ? [] : settled.flatMap((each, i) => (each === null ? [i] : []));
    if (inside.length === 0 && open.length === 0) return true;
    const shares = mixWithin(gram, inside, open, minShare);
    if (mixed(gram, shares) >= least - AS_GOOD * scale) return true;
    const short = open.filter((i) => (shares[i] as number) > 0 && (shares[i] as number) < minShare);
    if (short.length === 0) {
      keep(shares);
      return true;
    }
    const whole = settled.flatMap((_, i) => ((shares[i] as number) >= minShare ? [i] : []));
    if (whole.length > 0 && whole.length <= most) keep(mixWithin(gram, whole, [], minShare));
    const split = short.reduce((one, other) => ((shares[other] as number) > (shares[one] as number) ? other : one));
    return tryOut(settledWith(settled, split, "in", better)) && tryOut(settledWith(settled, split, "out", better));
  };

  for (let i = 0; i < size; i++) keep(mixWithin(gram, [i], [], minShare));
  return tryOut(new Array<Settled>(size).fill(null)) ? best : null;
}

/** The best mix of lots of which those inside have the smallest share at least, the open ones any share. */
function mixWithin(gram: Gram, inside: readonly number[], open: readonly number[], minShare: number): Float64Array {
  // With w = floor + rest·v the mix of the v is again one of points: each lot's own point moved by what is settled.
  const rest = Math.max(0, 1 - inside.length * minShare);
  const lots = [...inside, ...open];
  const fromSettled = new Float64Array(lots.length);
  let settledValue = 0;
  for (let a = 0; a < lots.length; a++) {
    const row = gram[lots[a] as number] as ArrayLike<number>;
    let sum = 0;
    for (let k = 0; k < inside.length; k++) sum += row[lots[k] as number] as number;
    fromSettled[a] = sum * minShare;
    if (a < inside.length) settledValue += sum * minShare * minShare;
  }
  const moved: Float64Array[] = [];
  for (let a = 0; a < lots.length; a++) {
    const row = gram[lots[a] as number] as ArrayLike<number>;
    const made = new Float64Array(lots.length);
    const own = settledValue + rest * (fromSettled[a] as number);
    for (let b = 0; b < lots.length; b++) {
      made[b] = own + rest * ((fromSettled[b] as number) + rest * (row[lots[b] as number] as number));
    }
    moved.push(made);
  }
  const shares = new Float64Array(gram.length);
  for (const i of inside) shares[i] = minShare;
  const mix = leastMix(moved);
  for (let a = 0; a < lots.length; a++) {
    const i = lots[a] as number;
    shares[i] = (shares[i] as number) + rest * (mix[a] as number);
  }
  return shares;
}

/** By lot: those that are at least as good in every way; of equals the one that stands first. */
function betterLots(gram: Gram): readonly (readonly number[])[] {
  const at = (i: number, k: number) => gram[i]?.[k] as number;
  const lots = gram.map((_, i) => i);
  const noWorse = (i: number, j: number) =>
    at(i, i) <= at(j, j) && lots.every((k) => k === i || k === j || at(i, k) <= at(j, k));
  return lots.map((j) => lots.filter((i) => i !== j && noWorse(i, j) && (i < j || !noWorse(j, i))));
}

/** Settles a lot, and with it those that are in wherever it is, or out. */
function settledWith(
  settled: readonly Settled[],
  lot: number,
  as: "in" | "out",
  better: readonly (readonly number[])[],
) {
  const next = [...settled];
  next[lot] = as;
  if (as === "in") for (const i of better[lot] ?? []) next[i] = settled[i] === "out" ? "out" : "in";
  else
    better.forEach((over, i) => {
      if (over.includes(lot) && next[i] === null) next[i] = "out";
    });
  return next;
}

/** A symmetric matrix that is never negative in any direction (w'Gw ≥ 0 but for rounding), row by row. */
export type Gram = readonly ArrayLike<number>[];

/** A share below this counts as none. */
const NO_SHARE = 1e-12;

/**
 * The mix of least w'Gw with Σw = 1 and w ≥ 0; where it is not unique, one of the least.
 *
 * Finds the point nearest to the origin in the hull of points whose inner products G holds: goes toward the point that leads down most
 * steeply, then to the least mix of the points in use, dropping those that would get less than nothing. What rounding leaves undone is
 * mended by moving share from the worst point in use to the best. Ends where w'Gw is certainly within rounding of the least:
 * w'Gw − min ≤ 2 (w'Gw − min_j (Gw)_j).
 * Source: Wolfe 1976, Mathematical Programming 11:128-149.
 */
export function leastMix(gram: Gram): Float64Array {
  const scale = Math.max(1e-300, ...gram.map((row, i) => row[i] as number));
  const shares = byNearestPoint(gram, scale);
  moveShares(gram, scale, shares);
  return shares;
}

/** w'Gw */
export function mixed(gram: Gram, shares: ArrayLike<number>): number {
  return dot(shares, slopesAt(gram, shares));
}

/** Gw */
function slopesAt(gram: Gram, shares: ArrayLike<number>): Float64Array {
  const slopes = new Float64Array(gram.length);
  for (let i = 0; i < gram.length; i++) slopes[i] = dot(gram[i] as ArrayLike<number>, shares);
  return slopes;
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function byNearestPoint(gram: Gram, scale: number): Float64Array {
  const shares = new Float64Array(gram.length);
  let used = [lowest(gram.map((row, i) => row[i] as number))];
  shares[used[0] as number] = 1;
  // Each round ends on a smaller value over another set of points, so that no set comes twice.
  for (let round = 0; round < 50 * (gram.length + 1); round++) {
    const slopes = slopesAt(gram, shares);
    const best = lowest(slopes);
    if (used.includes(best) || dot(shares, slopes) - (slopes[best] as number) <= 1e-15 * scale) break;
    used.push(best);
    const left = toLeastOf(gram, scale, shares, used);
    if (left === null) break;
    used = left;
  }
  return shares;
}

/** Moves to the least mix of the points in use, or as far as no share falls below nothing, and again without the dropped ones. */
function toLeastOf(gram: Gram, scale: number, shares: Float64Array, points: number[]): number[] | null {
  let used = points;
  for (;;) {
    const target = leastAffine(gram, scale, used);
    if (target === null) return null;
    let step = 1;
    used.forEach((i, place) => {
      const from = shares[i] as number;
      const to = target[place] as number;
      if (to < NO_SHARE && from > to) step = Math.min(step, from / (from - to));
    });
    let sum = 0;
    used.forEach((i, place) => {
      const from = shares[i] as number;
      const moved = from + step * ((target[place] as number) - from);
      shares[i] = moved < NO_SHARE ? 0 : moved;
      sum += shares[i] as number;
    });
    for (const i of used) shares[i] = (shares[i] as number) / sum;
    const left = used.filter((i) => (shares[i] as number) > 0);
    if (left.length === used.length || step === 1) return left;
    used = left;
  }
}

/** The least y'Gy with Σy = 1 over the points in use, shares of any sign; null where the points do not tell it apart. */
function leastAffine(gram: Gram, scale: number, used: readonly number[]): Float64Array | null {
  // (G + scale·11')u = 1 has a solution where the points are affinely independent, and u in proportion to y.
  const size = used.length;
  const factor = used.map(() => new Float64Array(size));
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = scale + ((gram[used[i] as number] as ArrayLike<number>)[used[j] as number] as number);
      for (let k = 0; k < j; k++) sum -= (factor[i]?.[k] as number) * (factor[j]?.[k] as number);
      if (i === j && sum <= 1e-15 * scale) return null;
      (factor[i] as Float64Array)[j] = i === j ? Math.sqrt(sum) : sum / (factor[j]?.[j] as number);
    }
  }
  const solved = new Float64Array(size).fill(1);
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < i; k++) solved[i] = (solved[i] as number) - (factor[i]?.[k] as number) * (solved[k] as number);
    solved[i] = (solved[i] as number) / (factor[i]?.[i] as number);
  }
  for (let i = size - 1; i >= 0; i--) {
    for (let k = i + 1; k < size; k++) {
      solved[i] = (solved[i] as number) - (factor[k]?.[i] as number) * (solved[k] as number);
    }
    solved[i] = (solved[i] as number) / (factor[i]?.[i] as number);
  }
  const sum = solved.reduce((total, each) => total + each, 0);
  return solved.map((each) => each / sum);
}

/** Moves share from the worst point in use to the best until nothing is left to win beyond rounding. */
function moveShares(gram: Gram, scale: number, shares: Float64Array): void {
  for (let move = 0; move < 2000; move++) {
    const slopes = slopesAt(gram, shares);
    const best = lowest(slopes);
    const worst = lowest(slopes.map((slope, i) => ((shares[i] as number) > 0 ? -slope : Number.POSITIVE_INFINITY)));
    const won = (slopes[worst] as number) - (slopes[best] as number);
    if (best === worst || won <= 1e-14 * scale) return;
    const bend =
      (gram[best]?.[best] as number) + (gram[worst]?.[worst] as number) - 2 * (gram[best]?.[worst] as number);
    const all = shares[worst] as number;
    const moved = bend > 0 ? Math.min(all, won / bend) : all;
    shares[worst] = all - moved < NO_SHARE ? 0 : all - moved;
    shares[best] = (shares[best] as number) + all - (shares[worst] as number);
  }
}

function lowest(values: ArrayLike<number>): number {
  let least = 0;
  for (let i = 1; i < values.length; i++) if ((values[i] as number) < (values[least] as number)) least = i;
  return least;
}

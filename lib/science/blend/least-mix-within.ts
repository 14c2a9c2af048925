import { type Gram, leastMix, mixed } from "./least-mix";

/** Moves of share before what is found is taken as it is: far more than any real mix needs. */
const MOST_MOVES = 20_000;

/** What is left to win is compared with the largest θ; below this it is rounding. */
const NOTHING_WON = 1e-13;

/**
 * The mix of least w'Gw with Σ w = 1 and 0 ≤ w ≤ most, one upper end a lot: of no jar more than it can give. Where it is not unique, one of
 * the least. Null where all lots together cannot fill the mix (Σ most < 1).
 *
 * Share is moved from the lot whose last seed costs most to the one whose next seed costs least, st = (g_j − g_i)/(t_ii + t_jj − 2t_ij) with
 * g = Gw, never past an end, until no move wins more than rounding; for a convex sum that is the least.
 * Source: minimum-coancestry contributions with limits, Fernández, Toro & Caballero 2001, Animal Biodiversity and Conservation 24.2:17-24.
 */
export function leastMixWithin(gram: Gram, most: readonly number[]): Float64Array | null {
  const room = most.map((each) => Math.min(1, Math.max(0, each)));
  const all = room.reduce((sum, each) => sum + each, 0);
  if (all < 1 - 1e-9) return null;
  const free = leastMix(gram);
  if (free.every((share, i) => share <= (room[i] as number) + 1e-12)) return free;
  const shares = Float64Array.from(room, (each) => each / Math.max(1, all));
  const scale = Math.max(1e-300, ...gram.map((row, i) => row[i] as number));
  for (let move = 0; move < MOST_MOVES; move++) {
    const slopes = gram.map((row) => shares.reduce((sum, share, k) => sum + share * (row[k] as number), 0));
    let from = -1;
    let to = -1;
    slopes.forEach((slope, i) => {
      const share = shares[i] as number;
      if (share > 0 && (from < 0 || slope > (slopes[from] as number))) from = i;
      if (share < (room[i] as number) && (to < 0 || slope < (slopes[to] as number))) to = i;
    });
    const won = from < 0 || to < 0 ? 0 : (slopes[from] as number) - (slopes[to] as number);
    if (won <= NOTHING_WON * scale) break;
    const bend = (gram[from]?.[from] as number) + (gram[to]?.[to] as number) - 2 * (gram[from]?.[to] as number);
    const ends = Math.min(shares[from] as number, (room[to] as number) - (shares[to] as number));
    const step = bend > 0 ? Math.min(ends, won / bend) : ends;
    const left = (shares[from] as number) - step;
    shares[from] = left < 1e-12 ? 0 : left;
    shares[to] = (shares[to] as number) + step;
  }
  return shares;
}

/** θ of a mix by its shares. */
export function coancestryOfMix(gram: Gram, shares: ArrayLike<number>): number {
  return Math.max(0, mixed(gram, shares));
}

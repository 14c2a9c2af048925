/** Tables this much likelier than the one seen still count as "no likelier": rounding must not split equals. */
const EQUAL_WITHIN = 1e-7;

/**
 * Fisher's exact test of two counts, two-sided: the chance of a table no likelier than the one seen, its margins given.
 *
 * xa of na seeds and xb of nb (whole, x ≤ n). Result 0 to 1. Chances are followed outward from the likeliest table and divided
 * by their own sum, so that no factorial is needed: relative error about 1e-13.
 * Example: 47 of 50 and 40 of 50: 0.0713. Source: Fisher 1935, J. R. Stat. Soc. 98:39-82; two-sided by point chances as in Freeman
 * & Halton 1951, Biometrika 38:141-149.
 */
export function fisherExact(xa: number, na: number, xb: number, nb: number): number {
  const total = xa + xb;
  const least = Math.max(0, total - nb);
  const most = Math.min(na, total);
  const mode = Math.min(most, Math.max(least, Math.floor(((na + 1) * (total + 1)) / (na + nb + 2))));
  const ratio = (x: number) => ((na - x) * (total - x)) / ((x + 1) * (nb - total + x + 1));
  const seen = chanceAt(xa, mode, ratio) * (1 + EQUAL_WITHIN);

  let all = 1;
  let noLikelier = seen >= 1 ? 1 : 0;
  const take = (chance: number) => {
    all += chance;
    if (chance <= seen) noLikelier += chance;
  };
  for (let x = mode, chance = 1; x < most && chance > 0; x++) {
    chance *= ratio(x);
    take(chance);
  }
  for (let x = mode, chance = 1; x > least && chance > 0; x--) {
    chance /= ratio(x - 1);
    take(chance);
  }
  return Math.min(1, noLikelier / all);
}

/** The chance of x as a part of the mode's. */
function chanceAt(x: number, mode: number, ratio: (x: number) => number): number {
  let chance = 1;
  for (let at = mode; at < x && chance > 0; at++) chance *= ratio(at);
  for (let at = mode; at > x && chance > 0; at--) chance /= ratio(at - 1);
  return chance;
}

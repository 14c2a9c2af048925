/** Closed in on to this part of the years. */
const CLOSE = 1e-7;
/** A part of the scale so small that it is the beginning. */
const SOONEST = 1e-100;

/**
 * The years within which the threshold is reached with this chance: 0 where it is at the beginning. `chanceWithin` rises with the
 * years; `scale` is where the search sets out. ∞ where no number of years reaches it.
 */
export function quantileOfYears(chanceWithin: (years: number) => number, chance: number, scale: number): number {
  if (chanceWithin(0) >= chance) return 0;
  let low = 0;
  let high = scale;
  for (let at = chanceWithin(high) - chance; at < 0; at = chanceWithin(high) - chance) {
    low = high;
    high *= 4;
    if (!Number.isFinite(high)) return Number.POSITIVE_INFINITY;
  }
  while (low === 0 || high / low > 2) {
    const middle = low === 0 ? high / 4 : Math.sqrt(low * high);
    if (middle < SOONEST * scale) return 0;
    if (chanceWithin(middle) < chance) low = middle;
    else high = middle;
  }
  return closeIn((years) => chanceWithin(years) - chance, low, high);
}

/** The root of a rising function between two bounds, by the Illinois form of false position. */
function closeIn(rising: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  let [atLow, atHigh] = [rising(low), rising(high)];
  let side = 0;
  for (let round = 0; round < 100 && high - low > CLOSE * high; round++) {
    const x = atHigh > atLow ? low - (atLow * (high - low)) / (atHigh - atLow) : (low + high) / 2;
    const at = rising(x);
    if (Math.abs(at) < 1e-13) return x;
    if (at < 0) {
      [low, atLow] = [x, at];
      if (side === -1) atHigh /= 2;
      side = -1;
    } else {
      [high, atHigh] = [x, at];
      if (side === 1) atLow /= 2;
      side = 1;
    }
  }
  return (low + high) / 2;
}

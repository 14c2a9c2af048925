/**
 * Chance that a start number fixes, the same on every machine: xoshiro128** with its state filled by a mixing counter.
 * Source: Blackman & Vigna 2021, ACM Trans. Math. Softw. 47:36 (xoshiro128** 1.1); the counter after
 * Steele, Lea & Flood 2014, OOPSLA '14:453-472.
 */
export class SeededDraws {
  readonly #state: Uint32Array;

  constructor(seed: number) {
    let mixing = Math.trunc(seed) >>> 0;
    this.#state = Uint32Array.from({ length: 4 }, () => {
      mixing = (mixing + 0x9e3779b9) >>> 0;
      let mixed = Math.imul(mixing ^ (mixing >>> 16), 0x21f0aaad);
      mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
      return (mixed ^ (mixed >>> 15)) >>> 0;
    });
  }

  /** A whole number of 32 bits. */
  bits(): number {
    const s = this.#state;
    const [a, b, c, d] = [s[0] ?? 0, s[1] ?? 0, s[2] ?? 0, s[3] ?? 0];
    const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
    const two = c ^ a;
    const three = d ^ b;
    s[1] = b ^ two;
    s[0] = a ^ three;
    s[2] = two ^ (b << 9);
    s[3] = rotated(three, 11);
    return result;
  }

  /** At least 0, below 1. */
  next(): number {
    return this.bits() / 4294967296;
  }

  chance(probability: number): boolean {
    return this.next() < probability;
  }

  /** A place in a list of running totals, each as likely as its part of the last total. */
  among(totals: ArrayLike<number>): number {
    const wanted = this.next() * (totals[totals.length - 1] ?? 0);
    let [low, high] = [0, totals.length - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((totals[middle] ?? 0) > wanted) high = middle;
      else low = middle + 1;
    }
    return low;
  }
}

function rotated(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}

export function runningTotals(parts: readonly number[]): Float64Array {
  const totals = new Float64Array(parts.length);
  let sum = 0;
  parts.forEach((part, place) => {
    sum += part;
    totals[place] = sum;
  });
  return totals;
}

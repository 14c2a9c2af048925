/**
 * Chance that falls the same way on every machine: 32-bit whole-number arithmetic alone, begun from a text. Each thing that is left to
 * chance has a text of its own, so that one story can be changed and all others stay as they are.
 */
export class Draws {
  #state: number;

  constructor(text: string) {
    let hash = 0x811c9dc5;
    for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193) >>> 0;
    this.#state = hash;
  }

  /** At least 0, below 1. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), this.#state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }

  chance(probability: number): boolean {
    return this.next() < probability;
  }

  /** A whole number from low to high, both included. */
  whole(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }

  /** A number around the middle, at most `spread` of it away, most often close by. */
  near(middle: number, spread: number): number {
    const sum = this.next() + this.next() + this.next();
    return middle * (1 + spread * ((sum * 2) / 3 - 1));
  }

  pick<Item>(items: readonly Item[]): Item {
    const item = items[this.whole(0, items.length - 1)];
    if (item === undefined) throw new RangeError("nothing to pick from");
    return item;
  }

  /** How many of `count` come up when each does so with this probability. */
  comeUp(count: number, probability: number): number {
    let up = 0;
    for (let each = 0; each < count; each++) if (this.chance(probability)) up += 1;
    return up;
  }
}

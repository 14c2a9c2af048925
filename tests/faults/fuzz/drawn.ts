import { appendFileSync } from "node:fs";
import { numberStream } from "../protocol";

/** Draws from one seed: the same seed draws the same. */
export class Drawn {
  private readonly next: () => number;

  constructor(seed: number) {
    this.next = numberStream(seed);
  }

  /** A whole number from 0, below `below`. */
  whole(below: number): number {
    return Math.floor(this.next() * below);
  }

  chance(of: number): boolean {
    return this.next() < of;
  }

  one<T>(from: readonly T[]): T {
    return from[this.whole(from.length)] as T;
  }

  bytes(most: number): Uint8Array {
    return Uint8Array.from({ length: this.whole(most + 1) }, () => this.whole(256));
  }
}

/** How many cases are tried, and from which seed: a thousand with the other tests, more by `npm run fuzz -- COUNT SEED`. */
export function fuzzWanted(): { readonly cases: number; readonly seed: number } {
  return {
    cases: Number(process.env.KINROW_FUZZ_CASES ?? 1000),
    seed: Number(process.env.KINROW_FUZZ_SEED ?? 20_261_127),
  };
}

/** Writes how often each kind of form was taken and refused, and leaves it for `npm run fuzz` to add up. */
export function tellKinds(byForm: ReadonlyMap<string, { accepted: number; refused: number }>): void {
  const file = process.env.KINROW_FUZZ_KINDS;
  if (file) appendFileSync(file, `${JSON.stringify(Object.fromEntries(byForm))}\n`);
}

/** Writes what a run counted where `npm run fuzz` shows it. */
export function tell(line: string): void {
  if (process.env.KINROW_FUZZ_CASES) console.log(line);
}

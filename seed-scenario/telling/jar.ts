import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { Person } from "../circle/people";
import { daysOf, yearsFrom } from "./calendar";

/** Seed of one age: its share of the jar, how much of it lived when fresh, and the years it has spent as if in a dry cupboard. */
export interface SeedOfOneAge {
  readonly share: number;
  readonly fresh: number;
  readonly years: number;
}

export interface JarOf {
  readonly lot: string;
  readonly holder: Person;
  /** the year as the lot writes it */
  readonly year: string;
  readonly seedWeight: number;
  readonly halfLife: number;
  readonly seed: readonly SeedOfOneAge[];
  /** from when on it stands with this holder */
  readonly from: CivilDay;
}

export interface Booking {
  readonly day: CivilDay;
  readonly hundredths: number;
}

/** One lot while the story runs: what is in it, and how much of that still lives. Amounts are whole hundredths of a gram. */
export class Jar {
  readonly lot: string;
  readonly holder: Person;
  readonly year: string;
  readonly seedWeight: number;
  readonly from: CivilDay;
  readonly #of: JarOf;
  #hundredths = 0;
  /** the last day on which something was booked */
  lastDay: CivilDay = "0000-01-01";
  tested: { readonly day: CivilDay; readonly share: number } | null = null;
  tests = 0;
  /** kept for its own sake, whatever is newer */
  kept = false;
  /** stands apart: not sown, given or handed out without a word of the story */
  apart = false;

  constructor(of: JarOf) {
    this.#of = of;
    this.lot = of.lot;
    this.holder = of.holder;
    this.year = of.year;
    this.seedWeight = of.seedWeight;
    this.from = of.from;
  }

  get grams(): number {
    return this.#hundredths / 100;
  }

  get seeds(): number {
    return Math.floor((this.grams * 1000) / this.seedWeight);
  }

  /** the last day on which it can have been harvested */
  get harvested(): CivilDay {
    return this.year === "" ? this.from : daysOf(this.year).last;
  }

  /** What the seed of this jar is on a day, for a part of it that goes elsewhere. */
  seedOn(day: CivilDay): SeedOfOneAge[] {
    const years = Math.max(0, yearsFrom(this.#of.from, day)) / this.#of.holder.store.slows;
    return this.#of.seed.map((part) => ({ ...part, years: part.years + years }));
  }

  /** The share that would make a normal seedling. It falls slowly at first, to one half after the crop's half life. */
  living(day: CivilDay): number {
    return this.seedOn(day).reduce((sum, { share, fresh, years }) => {
      const aged = years / this.#of.halfLife;
      return sum + (share * fresh) / (1 + aged * aged * aged);
    }, 0);
  }

  bring(date: string, grams: number): number {
    return this.#book(daysOf(date).first, grams, 1);
  }

  take(date: string, grams: number): number {
    return this.#book(daysOf(date).last, grams, -1);
  }

  setTo(date: string, grams: number): number {
    const hundredths = Math.round(grams * 100);
    this.#stamp(daysOf(date).last);
    this.#hundredths = hundredths;
    return hundredths / 100;
  }

  #book(day: CivilDay, grams: number, sign: 1 | -1): number {
    const hundredths = Math.round(grams * 100);
    if (hundredths <= 0) throw new RangeError(`${this.lot}: nothing to book on ${day}`);
    this.#stamp(day);
    this.#hundredths += sign * hundredths;
    if (this.#hundredths < 0) throw new RangeError(`${this.lot}: ${grams} g on ${day} are more than the jar holds`);
    return hundredths / 100;
  }

  #stamp(day: CivilDay): void {
    if (day < this.lastDay) throw new RangeError(`${this.lot}: ${day} comes after ${this.lastDay} in the story`);
    this.lastDay = day;
  }
}

/** Grams as a scale of the house shows them: whole above 200 g, tenths above 20 g, hundredths below. */
export function weighed(grams: number): number {
  const step = grams >= 200 ? 1 : grams >= 20 ? 10 : 100;
  return Math.max(0.01, Math.round(grams * step) / step);
}

/** The weight of counted seeds, rounded up to what the jar is lighter by. */
export function weightOf(seeds: number, seedWeight: number): number {
  return Math.max(0.01, Math.ceil((seeds * seedWeight) / 10 - 1e-9) / 100);
}

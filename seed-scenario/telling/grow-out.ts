import { addDays, type CivilDay } from "@/lib/science/dates/civil-day";
import type { CropHabit } from "../circle/crop-habits";
import type { Person, PersonName } from "../circle/people";
import type { Draws } from "./draws";
import type { Jar, SeedOfOneAge } from "./jar";

/** The columns of a grow-out that nobody wrote down. */
export type Unwritten = "plants_standing" | "seed_parents" | "seed_shares" | "seeds_sown" | "rogued_before_pollen";

/** A sowing as a story tells it. What is left out is drawn from the crop's habit. */
export interface Sowing {
  readonly by: PersonName;
  readonly from: readonly (Jar | readonly [jar: Jar, share: number])[];
  readonly plot?: string;
  /** a day of that year (MM-DD), or a date as written where the day is not known */
  readonly on?: string;
  readonly writtenAs?: string;
  readonly seeds?: number;
  /** plants wanted */
  readonly plants?: number;
  readonly standing?: number;
  readonly males?: number;
  readonly before?: number;
  readonly after?: number;
  readonly pulledFor?: string;
  /** the day on which the losses of a winter were counted: then that is the only pass before the pollen */
  readonly winterCounted?: string;
  readonly seedParents?: number;
  readonly shares?: string;
  /** plants whose tassels were taken before they shed, and how many of the seed parents were such */
  readonly detasselled?: { readonly plants: number; readonly seedParents: number };
  readonly selfing?: number;
  readonly foreign?: number;
  /** how the foreign pollen was found */
  readonly foreignHow?: string;
  /** why no seed came */
  readonly outcome?: string;
  readonly purpose?: "renew" | "food" | "compare" | "teach" | "increase";
  readonly note?: string;
  readonly seedsOfEach?: number;
  /** seed taken, where it was weighed plant by plant */
  readonly grams?: number;
  readonly unwritten?: readonly Unwritten[];
  /** a perennial: seed is taken in these years, each time as the story says */
  readonly standsOn?: boolean;
}

export interface Counts {
  readonly seeds: number;
  readonly up: number;
  readonly standing: number;
  readonly before: number;
  readonly after: number;
  readonly pollenParents: number;
  readonly males: number | null;
  readonly seedParents: number;
}

export interface GrowOut {
  readonly name: string;
  readonly by: Person;
  readonly sowing: Sowing;
  readonly sown: CivilDay;
  readonly harvestYear: number;
  readonly counts: Counts;
  readonly shares: string;
  readonly lots: Jar[];
}

/** How many seeds are wanted for so many plants, given what lives of them. */
export function seedsFor(plants: number, living: number, habit: CropHabit): number {
  const exact = (plants / (Math.max(0.15, living) * habit.comesUp)) * 1.25;
  return exact > 60 ? Math.ceil(exact / 10) * 10 : Math.ceil(exact / 2) * 2;
}

export function countPlants(
  sowing: Sowing,
  seeds: number,
  living: number,
  habit: CropHabit,
  separateSexes: boolean,
  draws: Draws,
): Counts {
  const wanted = Math.round(draws.near(sowing.plants ?? habit.plants, 0.12));
  const cameUp = draws.comeUp(seeds, living * habit.comesUp);
  const standing = sowing.standing ?? Math.max(1, Math.min(wanted, cameUp - draws.whole(0, Math.ceil(cameUp * 0.04))));
  const up = Math.max(cameUp, standing);
  const before = sowing.before ?? Math.round(draws.near(standing * habit.pulled[0], 0.7));
  const after = sowing.after ?? Math.round(draws.near(standing * habit.pulled[1], 0.8));
  const left = standing - before;
  const males = separateSexes ? (sowing.males ?? draws.comeUp(left, 0.47)) : null;
  const able = males === null ? left : left - males;
  const kept = Math.min(able - after, Math.round(draws.near(able * habit.seedParents, 0.12)));
  const seedParents = sowing.seedParents ?? Math.max(1, kept);
  const pollenParents = males ?? left;
  if (up > seeds || seedParents > able || pollenParents < 1)
    throw new RangeError(`${seeds} seeds, ${up} up, ${standing} standing, ${seedParents} seed parents cannot be`);
  return { seeds, up, standing, before, after, pollenParents, males, seedParents };
}

/** What the seed of a harvest is when fresh. */
export function freshSeed(habit: CropHabit, weather: number, draws: Draws): SeedOfOneAge {
  return { share: 1, fresh: Math.min(0.99, draws.near(habit.fresh, 0.04) * weather), years: 0 };
}

/** The day on which the first flowers of a grow-out open. */
export function firstFlower(growOut: Pick<GrowOut, "sown" | "harvestYear">, habit: CropHabit): CivilDay {
  return typeof habit.flowers === "number"
    ? addDays(growOut.sown, habit.flowers)
    : `${growOut.harvestYear}-${habit.flowers}`;
}

import { type CivilDay, compareDays } from "./civil-day";

/** Which half of the world a season's months are taken from. */
export type Hemisphere = "north" | "south";

/** How finely a date is known: `interval` is `a/b` (from a to b), `within` is `[a..b]` (once, between a and b). */
export type DatePrecision = "day" | "month" | "season" | "year" | "decade" | "century" | "interval" | "within";

/** A date as it is known: the text that was written, and the first and last day it can mean, both included. */
export interface FuzzyDate {
  /** the EDTF text as written, without outer blanks */
  readonly text: string;
  readonly first: CivilDay;
  readonly last: CivilDay;
  /** `~` or `%`: about; does not widen first and last */
  readonly approximate: boolean;
  /** `?` or `%`: doubtful; does not widen first and last */
  readonly uncertain: boolean;
  readonly precision: DatePrecision;
}

/** Order by first possible day, then by last possible day; equal dates give 0, so that a stable sort keeps file order. */
export function compareByFirst(left: FuzzyDate, right: FuzzyDate): number {
  return compareDays(left.first, right.first) || compareDays(left.last, right.last);
}

/** Order by last possible day, then by first. */
export function compareByLast(left: FuzzyDate, right: FuzzyDate): number {
  return compareDays(left.last, right.last) || compareDays(left.first, right.first);
}

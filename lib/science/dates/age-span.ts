import { addYears, type CivilDay, daysBetween, splitCivilDay } from "./civil-day";
import type { FuzzyDate } from "./fuzzy-date";

/** Shortest and longest length of time, in years. */
export interface YearSpan {
  readonly low: number;
  readonly high: number;
}

/**
 * Years from one day to a later one: whole years as anniversaries count them, then the part of the year under way in
 * days over its length. Exact at each anniversary (29 February has its own on 28 February in other years). Negative
 * where `to` is earlier.
 */
export function yearsFromDayToDay(from: CivilDay, to: CivilDay): number {
  if (to < from) return -yearsFromDayToDay(to, from);
  const apart = Number(to.slice(0, 4)) - Number(from.slice(0, 4));
  const whole = addYears(from, apart) <= to ? apart : apart - 1;
  const before = addYears(from, whole);
  // The year after 9999 has no text; its length is that of a common year.
  const length = splitCivilDay(before)?.year === 9999 ? 365 : daysBetween(before, addYears(from, whole + 1));
  return whole + daysBetween(before, to) / length;
}

/** Shortest and longest time from one date to another by their first and last possible days; negative if they can stand the other way round. */
export function yearsBetween(from: FuzzyDate, to: FuzzyDate): YearSpan {
  return { low: yearsFromDayToDay(from.last, to.first), high: yearsFromDayToDay(from.first, to.last) };
}

/**
 * Age on the day `today`, in years: `low` from the last possible day, `high` from the first. What lies after today
 * counts as 0 (a lot of this year's harvest written as `2024` in July 2024 is 0 to 0.5 years old).
 */
export function ageSpan(date: FuzzyDate, today: CivilDay): YearSpan {
  return {
    low: Math.max(0, yearsFromDayToDay(date.last, today)),
    high: Math.max(0, yearsFromDayToDay(date.first, today)),
  };
}

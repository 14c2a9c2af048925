import { anniversaryNumber, type CivilDay, dayNumber } from "./civil-day";
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
  const end = dayNumber(to);
  const apart = Number(to.slice(0, 4)) - Number(from.slice(0, 4));
  const whole = anniversaryNumber(from, apart) <= end ? apart : apart - 1;
  const before = anniversaryNumber(from, whole);
  return whole + (end - before) / (anniversaryNumber(from, whole + 1) - before);
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

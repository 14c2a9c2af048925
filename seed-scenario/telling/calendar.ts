import { addDays, type CivilDay, daysBetween } from "@/lib/science/dates/civil-day";
import { parseDate } from "@/lib/science/dates/parse-date";
import type { Draws } from "./draws";

/** A day drawn between two days (MM-DD) of a year. */
export function dayBetween(year: number, [from, to]: readonly [string, string], draws: Draws): CivilDay {
  const first = `${year}-${from}`;
  return addDays(first, draws.whole(0, daysBetween(first, `${year}-${to}`)));
}

export function yearsFrom(from: CivilDay, to: CivilDay): number {
  return daysBetween(from, to) / 365.25;
}

/** The first and last day that a date of a story can mean. */
export function daysOf(text: string): { first: CivilDay; last: CivilDay } {
  const read = parseDate(text);
  if (!read.ok) throw new RangeError(`a story has a date that cannot be read: ${text}`);
  return read.value;
}

export function yearOf(day: CivilDay): number {
  return Number(day.slice(0, 4));
}

import { addDays, type CivilDay } from "@/lib/science/dates/civil-day";

/** First and last possible day of something, both included. */
export interface DaySpan {
  readonly first: CivilDay;
  readonly last: CivilDay;
}

/**
 * The days between which something is to be expected of plants by the days that their crop usually takes from sowing.
 *
 *     first = first possible day of sowing + fewest days          last = last possible day of sowing + most days
 *
 * Civil days. Null where the day of sowing or either number of days is not known, or where the span would leave the calendar.
 * Limits: the list's days are from many places and years; a cold spring adds weeks. Source: the days to flower and to ripe seed of the crop list.
 */
export function expectedDays(
  sown: DaySpan | null,
  days: { readonly min: number | null; readonly max: number | null },
): DaySpan | null {
  if (sown === null || days.min === null || days.max === null) return null;
  if (sown.last > "9990-01-01") return null;
  return { first: addDays(sown.first, days.min), last: addDays(sown.last, days.max) };
}

import { type CivilDay, daysBetween } from "./civil-day";

/** Whole days, the fewest and the most. */
export interface DaySpan {
  readonly low: number;
  readonly high: number;
}

/** Days from one date to another by their first and last possible days; negative where the other can come first. */
export function daysApart(
  from: { readonly first: CivilDay; readonly last: CivilDay },
  to: { readonly first: CivilDay; readonly last: CivilDay },
): DaySpan {
  return { low: daysBetween(from.last, to.first), high: daysBetween(from.first, to.last) };
}

import { type CivilDay, daysBetween } from "../dates/civil-day";

/** One end of flowering as it is known: the first and last day it can mean; the same day twice where it was seen. */
export interface WindowEnd {
  readonly first: CivilDay;
  readonly last: CivilDay;
}

/** When something flowers. A null end is not known, which is no end at all. */
export interface FloweringWindow {
  readonly from: WindowEnd | null;
  readonly to: WindowEnd | null;
}

/** Days in common, the fewest and the most that the ends allow; null: an end that is not known bounds nothing. */
export interface WindowOverlap {
  readonly least: number;
  readonly most: number | null;
}

/**
 * The days on which two windows overlap, both ends counted. least: of the days that are sure to lie within each; most: of all that may.
 * Where one is sure to be over before the other begins, most is 0 whatever else is unknown.
 */
export function windowOverlap(one: FloweringWindow, other: FloweringWindow): WindowOverlap {
  return { least: commonDays(sure(one), sure(other)) ?? 0, most: commonDays(possible(one), possible(other)) };
}

/** The days of a window, the fewest and the most; null where an end is not known. */
export function windowDays(window: FloweringWindow): WindowOverlap {
  return windowOverlap(window, window);
}

type Days = readonly [CivilDay | null, CivilDay | null];

/** From the last day that it can have begun to the first day that it can have ended; an unknown end leaves the one day that was seen. */
function sure({ from, to }: FloweringWindow): Days | "none" {
  const begun = from === null ? dayOf(to) : from.last;
  const ended = to === null ? dayOf(from) : to.first;
  return begun === null || ended === null || begun > ended ? "none" : [begun, ended];
}

/** The day of an end that is known to the day. */
function dayOf(end: WindowEnd | null): CivilDay | null {
  return end !== null && end.first === end.last ? end.first : null;
}

function possible({ from, to }: FloweringWindow): Days {
  return [from?.first ?? null, to?.last ?? null];
}

/** Null where the days in common have no bound. */
function commonDays(one: Days | "none", other: Days | "none"): number | null {
  if (one === "none" || other === "none") return 0;
  const from = [one[0], other[0]]
    .filter((day): day is CivilDay => day !== null)
    .sort()
    .at(-1);
  const to = [one[1], other[1]].filter((day): day is CivilDay => day !== null).sort()[0];
  if (apart(one, other) || apart(other, one)) return 0;
  return from === undefined || to === undefined ? null : daysBetween(from, to) + 1;
}

/** The one is over before the other begins. */
function apart(one: Days, other: Days): boolean {
  return one[1] !== null && other[0] !== null && one[1] < other[0];
}

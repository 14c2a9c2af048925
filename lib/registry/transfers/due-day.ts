import type { CivilDay } from "@/lib/science/dates/civil-day";
import { parseDate } from "@/lib/science/dates/parse-date";

/** The last day that a date as it is written can mean; null where it means none. */
export function lastDayOf(written: string): CivilDay | null {
  const read = parseDate(written);
  return read.ok ? read.value.last : null;
}

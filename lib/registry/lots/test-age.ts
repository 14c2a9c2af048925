import { yearsFromDayToDay } from "@/lib/science/dates/age-span";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { parseDate } from "@/lib/science/dates/parse-date";

/**
 * Whether a test is older than the usual life of the crop's seed: then it tells what lived, not what lives. Counted from the last possible
 * day of its date, so that it surely is. False where the usual life is not known.
 */
export function testedTooLongAgo(
  test: { readonly date: string },
  usualLifeYears: number | null,
  today: CivilDay,
): boolean {
  if (usualLifeYears === null) return false;
  const on = parseDate(test.date);
  return on.ok && yearsFromDayToDay(on.value.last, today) > usualLifeYears;
}

import { parseDate } from "@/lib/science/dates/parse-date";

/** The last day of a year, month or day as a person writes it; null where it is none. */
export function lastDayOf(written: string): string | null {
  if (written === "") return null;
  const date = parseDate(written);
  return date.ok ? date.value.last : null;
}

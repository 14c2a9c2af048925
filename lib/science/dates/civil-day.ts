/**
 * A day of the civil calendar as text, `YYYY-MM-DD`, in the proleptic Gregorian calendar of ISO 8601, years 0000 to 9999.
 * It has no time of day and no time zone: all arithmetic is on whole numbers, never on a clock.
 * The functions below take days that came from `parseDate` or passed `isCivilDay`; anything else is a fault of the
 * calling code and throws a RangeError.
 */
export type CivilDay = string;

export interface YearMonthDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const DAYS_IN_400_YEARS = 146_097;

export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** Days in a month (1 to 12) of a year; 0 where there is no such month. */
export function daysInMonth(year: number, month: number): number {
  return month === 2 && isLeapYear(year) ? 29 : (MONTH_LENGTHS[month - 1] ?? 0);
}

/** The numbers of a day, or null where the text is no day of the calendar (`1987-02-30`, `1987-5-2`). */
export function splitCivilDay(text: string): YearMonthDay | null {
  if (text.length !== 10 || text[4] !== "-" || text[7] !== "-") return null;
  const [year, month, day] = [digits(text, 0, 4), digits(text, 5, 7), digits(text, 8, 10)];
  // NaN, where something is no digit, is not at most anything.
  return year >= 0 && day >= 1 && day <= daysInMonth(year, month) ? { year, month, day } : null;
}

/** The number that the digits of a text make from one place up to another; NaN where one is no digit. A rule reads thousands of days. */
function digits(text: string, from: number, to: number): number {
  let number = 0;
  for (let place = from; place < to; place += 1) {
    const digit = text.charCodeAt(place) - 48;
    if (digit < 0 || digit > 9) return Number.NaN;
    number = number * 10 + digit;
  }
  return number;
}

export function isCivilDay(text: string): boolean {
  return splitCivilDay(text) !== null;
}

/** Writes a day as text; the month and day must exist, the year lie in 0000 to 9999 (else RangeError). */
export function civilDay(year: number, month: number, day: number): CivilDay {
  if (!(year >= 0 && year <= 9999 && day >= 1 && day <= daysInMonth(year, month))) {
    throw new RangeError(`no civil day: year ${year}, month ${month}, day ${day}`);
  }
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/**
 * Counts days from 1970-01-01 (= 0). Years begin in March, so that the leap day is the last of its year.
 * Source: the Gregorian cycle of 400 years = 146,097 days.
 */
export function dayNumber(day: CivilDay): number {
  return numberOf(known(day));
}

function numberOf({ year, month, day: dayOfMonth }: YearMonthDay): number {
  const marchYear = month <= 2 ? year - 1 : year;
  const cycle = Math.floor(marchYear / 400);
  const yearOfCycle = marchYear - cycle * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + dayOfMonth - 1;
  const leapDays = Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100);
  return cycle * DAYS_IN_400_YEARS + yearOfCycle * 365 + leapDays + dayOfYear - 719_468;
}

/** The day with this number, the inverse of `dayNumber`. */
export function dayFromNumber(number: number): CivilDay {
  const shifted = Math.trunc(number) + 719_468;
  const cycle = Math.floor(shifted / DAYS_IN_400_YEARS);
  const dayOfCycle = shifted - cycle * DAYS_IN_400_YEARS;
  const leapDays = Math.floor(dayOfCycle / 1460) - Math.floor(dayOfCycle / 36_524) + Math.floor(dayOfCycle / 146_096);
  const yearOfCycle = Math.floor((dayOfCycle - leapDays) / 365);
  const dayOfYear = dayOfCycle - (365 * yearOfCycle + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfCycle + cycle * 400 + (month <= 2 ? 1 : 0);
  return civilDay(year, month, dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1);
}

/** The day `days` later (earlier if negative). */
export function addDays(day: CivilDay, days: number): CivilDay {
  return dayFromNumber(dayNumber(day) + Math.trunc(days));
}

/** Whole days from one day to another; negative where `to` is the earlier one. */
export function daysBetween(from: CivilDay, to: CivilDay): number {
  return dayNumber(to) - dayNumber(from);
}

/** The same day of another year; 29 February becomes 28 February where that year has none. */
export function addYears(day: CivilDay, years: number): CivilDay {
  const parts = known(day);
  const then = sameDayOfYear(parts, parts.year + Math.trunc(years));
  return civilDay(then.year, then.month, then.day);
}

function sameDayOfYear({ month, day }: YearMonthDay, year: number): YearMonthDay {
  return { year, month, day: Math.min(day, daysInMonth(year, month)) };
}

/** The number of the day (as `dayNumber`) that `addYears` gives, also where the year lies beyond 9999. */
export function anniversaryNumber(day: CivilDay, years: number): number {
  const parts = known(day);
  return numberOf(sameDayOfYear(parts, parts.year + Math.trunc(years)));
}

/** Order of two days: negative, 0 or positive. Text order is day order, since all parts have a fixed width. */
export function compareDays(left: CivilDay, right: CivilDay): number {
  return left < right ? -1 : left > right ? 1 : 0;
}

function known(day: CivilDay): YearMonthDay {
  const parts = splitCivilDay(day);
  if (parts === null) throw new RangeError(`no civil day: ${day}`);
  return parts;
}

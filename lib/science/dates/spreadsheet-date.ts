import { civilDay, dayFromNumber, dayNumber, daysInMonth } from "./civil-day";

/** A text that a spreadsheet has made of a date, with what it can have been (EDTF), the likelier first; may be empty. */
export interface SpreadsheetDate {
  readonly probably: readonly string[];
}

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const MONTH = "([A-Za-z]{3,9})";

type Rule = readonly [RegExp, (parts: string[]) => string[] | null];

const RULES: readonly Rule[] = [
  // May-96, May 1996
  [new RegExp(`^${MONTH}[-/. ](\\d{2}|\\d{4})$`), ([month, year]) => monthAndNumber(month, year)],
  // 96-May, 20-May
  [new RegExp(`^(\\d{1,2}|\\d{4})[-/. ]${MONTH}$`), ([number, month]) => monthAndNumber(month, number)],
  // 20-May-87, 20 May 1987
  [
    new RegExp(`^(\\d{1,2})[-/. ]{1,2}${MONTH}[-/. ](\\d{2}|\\d{4})$`),
    ([day, month, year]) => (monthOf(month) === 0 ? null : days(year, monthOf(month), Number(day))),
  ],
  // May 20, 1987
  [
    new RegExp(`^${MONTH}[ -](\\d{1,2}),?[ -](\\d{4})$`),
    ([month, day, year]) => (monthOf(month) === 0 ? null : days(year, monthOf(month), Number(day))),
  ],
  // 20/05/1987, 5/20/87, 20.05.1987, with or without a time of day
  [
    /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?:[ T]\d{1,2}:\d{2}.*)?$/,
    ([a, , b, year]) => [...new Set([...days(year, Number(b), Number(a)), ...days(year, Number(a), Number(b))])],
  ],
  // 05/1987
  [/^(\d{1,2})[-/.](\d{4})$/, ([month, year]) => months(year, Number(month))],
  // 1987-5-2, 1987/05/20, 1987-05-20 00:00:00
  [
    /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})(?:[ T]\d{1,2}:\d{2}.*)?$/,
    ([year, , month, day]) => days(year, Number(month), Number(day)),
  ],
  // 1987.0, 1,987: a year treated as a number
  [/^(\d{4})[.,]0+$/, ([year]) => [year ?? ""]],
  // 1987-5, 1987/05
  [/^(\d{4})[-/.](\d{1,2})$/, ([year, month]) => months(year, Number(month))],
  [/^(\d)[,. ](\d{3})$/, ([thousands, rest]) => [`${thousands}${rest}`]],
  [/^(\d{5})(?:[.,]\d+)?$/, ([serial]) => [dayOfSerial(Number(serial))]],
  [/^#{3,}$/, () => []],
];

/** Recognises what spreadsheets make of dates (`May-96`, `20/05/1987`, `5/20/87`, `32874`, `1987-5-2`) in a text that is no date; null for others. */
export function recogniseSpreadsheetDate(text: string): SpreadsheetDate | null {
  for (const [shape, read] of RULES) {
    const match = shape.exec(text);
    const probably = match === null ? null : read(match.slice(1));
    if (probably !== null) return { probably };
  }
  return null;
}

/** Spreadsheets count days from 1900 and hold 1900 for a leap year, so that from March 1900 on, day 0 is 1899-12-30. */
function dayOfSerial(serial: number): string {
  return dayFromNumber(dayNumber("1899-12-30") + serial);
}

function monthAndNumber(month: string | undefined, number: string | undefined): string[] | null {
  const known = monthOf(month);
  if (known === 0 || number === undefined) return null;
  const value = Number(number);
  // `May-20` is 20 May of a year no longer there, or May 2020: nothing can be said.
  return number.length < 4 && value <= 31 ? [] : months(number, known);
}

function monthOf(name: string | undefined): number {
  return MONTHS.indexOf((name ?? "").slice(0, 3).toLowerCase()) + 1;
}

function months(year: string | undefined, month: number): string[] {
  return month >= 1 && month <= 12 ? [civilDay(fullYear(year), month, 1).slice(0, 7)] : [];
}

function days(year: string | undefined, month: number, day: number): string[] {
  const full = fullYear(year);
  return day >= 1 && day <= daysInMonth(full, month) ? [civilDay(full, month, day)] : [];
}

/** Two digits as spreadsheets read them: 30 to 99 are the 1900s, 00 to 29 the 2000s. */
function fullYear(year: string | undefined): number {
  const value = Number(year ?? "");
  if ((year ?? "").length > 2) return value;
  return value >= 30 ? 1900 + value : 2000 + value;
}

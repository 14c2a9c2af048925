import { accepted, type Outcome, type Path, type Refusal, refusal, refused } from "../outcome";
import { type EdtfEnd, type EdtfPoint, readEdtfText } from "./edtf-text";
import type { FuzzyDate, Hemisphere } from "./fuzzy-date";
import { type NoSuchDay, type PointDays, pointDays } from "./point-days";
import { recogniseSpreadsheetDate } from "./spreadsheet-date";

export interface ParseDateOptions {
  /** where the season codes 21 to 24 take their months from; north unless told */
  readonly hemisphere?: Hemisphere;
  /** leads to the field, for the refusal */
  readonly path?: Path;
}

const HOW_TO_WRITE = "write it as 1987, 1987-05, 1991~ or 198X";

/**
 * Reads a date as it may be written in records: EDTF (ISO 8601-2:2019) level 0 and 1, and `[a..b]`.
 *
 * Gives the first and last civil day it can mean. `~` (about), `?` (doubtful) and `%` (both) are kept as marks and do not
 * widen the days; an open (`1987/..`) or unknown (`1987/`) end counts as the known one.
 * Refused, with what would be right: any other text, a day that is not in the calendar, an interval that ends before it
 * begins, years below 0000 or beyond 9999, a time of day, and a date that a spreadsheet has changed.
 */
export function parseDate(text: string, options: ParseDateOptions = {}): Outcome<FuzzyDate> {
  const { hemisphere = "north", path = [] } = options;
  const written = text.trim();
  const parts = readEdtfText(written);
  if (parts === null) return refused(notADate(written, path));
  if (parts.kind === "point") {
    const days = pointDays(parts.point, hemisphere);
    return "needed" in days ? refused(noSuchDay(written, path, days)) : accepted(fuzzy(written, days, [parts.point]));
  }
  const [from, to] = ends(parts.from, parts.to);
  const [start, end] = [pointDays(from, hemisphere), pointDays(to, hemisphere)];
  if ("needed" in start) return refused(noSuchDay(written, path, start));
  if ("needed" in end) return refused(noSuchDay(written, path, end));
  // Only what cannot be in order: `198X/1985` can, `1988/1987` cannot.
  if (start.first > end.last) {
    const needed = "write the earlier date first, as in 1987/1991";
    return refused(refusal("date-ends-before-it-begins", path, written, "ends before it begins", needed));
  }
  const span: PointDays = { first: start.first, last: end.last, precision: parts.kind };
  return accepted(fuzzy(written, span, [from, to]));
}

function ends(from: EdtfEnd, to: EdtfEnd): [EdtfPoint, EdtfPoint] {
  if (typeof from !== "string") return [from, typeof to === "string" ? from : to];
  if (typeof to !== "string") return [to, to];
  throw new RangeError("an interval with two open ends has passed the reader");
}

function fuzzy(text: string, days: PointDays, points: readonly EdtfPoint[]): FuzzyDate {
  return {
    text,
    ...days,
    approximate: points.some((point) => point.approximate),
    uncertain: points.some((point) => point.uncertain),
  };
}

function noSuchDay(written: string, path: Path, wrong: NoSuchDay): Refusal {
  const years = /^(\d{4})-(\d{2})$/.exec(written);
  // `1987-91` is how a notebook writes a span of years.
  const closing = years === null ? "" : `${years[1]?.slice(0, 2)}${years[2]}`;
  if (years !== null && Number(years[2]) > 31 && closing > (years[1] ?? "")) {
    return refusal(
      "date-impossible",
      path,
      written,
      "is not a date",
      `for a span of years write ${years[1]}/${closing}`,
    );
  }
  return refusal("date-impossible", path, written, "is not a date", wrong.needed);
}

function notADate(written: string, path: Path): Refusal {
  if (/^[-−]\d{4,}|^Y-?\d+/.test(written)) {
    const wrong = "is a year outside 0000 to 9999, which seed records have no use for";
    return refusal("date-year-out-of-range", path, written, wrong, HOW_TO_WRITE);
  }
  const spreadsheet = recogniseSpreadsheetDate(written);
  if (spreadsheet !== null) {
    const [only, other] = spreadsheet.probably;
    const needed =
      only === undefined
        ? HOW_TO_WRITE
        : other === undefined
          ? `it was probably ${only}: look, and write it so`
          : `it was ${only} or ${other}: look, and write the right one`;
    // With blanks between its parts (`20 May 1987`) a person wrote it.
    return /[A-Za-z]/.test(written) && !/[-/]/.test(written)
      ? refusal("date-in-words", path, written, "is a date in words", needed)
      : refusal("date-changed-by-a-spreadsheet", path, written, "looks changed by a spreadsheet", needed);
  }
  if (/^\d{4}-\d{2}-\d{2}T/.test(written)) {
    return refusal(
      "date-with-time",
      path,
      written,
      "has a time of day",
      `write the day alone: ${written.slice(0, 10)}`,
    );
  }
  return refusal("date-not-edtf", path, written, "is not a date", HOW_TO_WRITE);
}

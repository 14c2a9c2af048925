import { type CivilDay, civilDay, daysInMonth } from "./civil-day";
import type { EdtfPoint } from "./edtf-text";
import type { DatePrecision, Hemisphere } from "./fuzzy-date";

export interface PointDays {
  readonly first: CivilDay;
  readonly last: CivilDay;
  readonly precision: DatePrecision;
}

/** What is wrong with a date of the right shape, in words that end the sentence: "is not a date; ...". */
export interface NoSuchDay {
  readonly needed: string;
}

const MONTH_NAMES = "January February March April May June July August September October November December".split(" ");

/** First months of spring, summer, autumn, winter: each has three, the one from December runs into the next year. */
const SEASON_STARTS: Record<Hemisphere, readonly [number, number, number, number]> = {
  north: [3, 6, 9, 12],
  south: [9, 12, 3, 6],
};

/**
 * First and last day that one date can mean. A season has three whole months of its hemisphere (spring, north: March to
 * May). Source: ISO 8601-2:2019 (EDTF) level 1; season months are those of meteorology.
 */
export function pointDays(point: EdtfPoint, hemisphere: Hemisphere): PointDays | NoSuchDay {
  const low = Number(point.year.replaceAll("X", "0"));
  const high = Number(point.year.replaceAll("X", "9"));
  if (point.month === null || point.month === "XX") {
    const precision = point.year.endsWith("XX") ? "century" : point.year.endsWith("X") ? "decade" : "year";
    return { first: civilDay(low, 1, 1), last: civilDay(high, 12, 31), precision };
  }
  const month = Number(point.month);
  if (month >= 21 && month <= 24 && point.day === null) return seasonDays(low, month - 21, hemisphere);
  const length = daysInMonth(low, month);
  if (length === 0) return { needed: "a month is 01 to 12, a season 21 (spring) to 24 (winter)" };
  if (point.day === null || point.day === "XX") {
    return { first: civilDay(low, month, 1), last: civilDay(low, month, length), precision: "month" };
  }
  const day = Number(point.day);
  if (day < 1 || day > length)
    return { needed: `${MONTH_NAMES[month - 1]} ${point.year} has the days 01 to ${length}` };
  const only = civilDay(low, month, day);
  return { first: only, last: only, precision: "day" };
}

function seasonDays(year: number, season: number, hemisphere: Hemisphere): PointDays | NoSuchDay {
  const start = SEASON_STARTS[hemisphere][season] ?? 3;
  const endMonth = ((start + 1) % 12) + 1;
  const endYear = endMonth < start ? year + 1 : year;
  if (endYear > 9999) return { needed: "a year is 0000 to 9999" };
  return {
    first: civilDay(year, start, 1),
    last: civilDay(endYear, endMonth, daysInMonth(endYear, endMonth)),
    precision: "season",
  };
}

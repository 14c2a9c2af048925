import { type EdtfEnd, type EdtfPoint, readEdtfText } from "@/lib/science/dates/edtf-text";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;
const SEASONS: Record<string, string> = { "21": "spring", "22": "summer", "23": "autumn", "24": "winter" };

/**
 * A date in the words a grower uses: "20 May 1987", "May 1987", "about 1991", "1991, not sure", "in the 1980s",
 * "between 1987 and 1991", "spring 1987", "1987 to 1991", "since 1987". Month names are English and fixed.
 *
 * Takes EDTF text, or anything that carries one (a FuzzyDate). A text that is no date is given back as it stands: what
 * a person wrote is never hidden.
 */
export function dateInWords(date: string | { readonly text: string }): string {
  const text = typeof date === "string" ? date : date.text;
  const parts = readEdtfText(text.trim());
  if (parts === null) return text;
  if (parts.kind === "point") {
    const { point } = parts;
    const alone = !point.approximate && /X$/.test(point.year) && !point.uncertain;
    return alone ? `in ${pointInWords(point)}` : pointInWords(point);
  }
  if (parts.kind === "within") return `between ${pointInWords(parts.from)} and ${pointInWords(parts.to)}`;
  return intervalInWords(parts.from, parts.to);
}

/** A civil day, `1987-05-20`, as "20 May 1987". */
export function dayInWords(day: string): string {
  return dateInWords(day);
}

/** The name of a month, 1 to 12. */
export function monthName(month: number): string {
  return MONTHS[month - 1] ?? "";
}

function intervalInWords(from: EdtfEnd, to: EdtfEnd): string {
  if (typeof from !== "string") {
    if (to === "open") return `since ${pointInWords(from)}`;
    if (to === "unknown") return `from ${pointInWords(from)}, end not known`;
    return `${pointInWords(from)} to ${pointInWords(to)}`;
  }
  if (typeof to === "string") return "";
  return from === "open" ? `until ${pointInWords(to)}` : `until ${pointInWords(to)}, beginning not known`;
}

function pointInWords(point: EdtfPoint): string {
  const about = point.approximate ? "about " : "";
  return `${about}${calendarWords(point)}${point.uncertain ? ", not sure" : ""}`;
}

function calendarWords({ year, month, day }: EdtfPoint): string {
  // "The 1900s" can be ten years or a hundred: both are written out.
  if (year.endsWith("XX") || year.endsWith("0X")) {
    return `the years ${year.replaceAll("X", "0")} to ${year.replaceAll("X", "9")}`;
  }
  if (year.endsWith("X")) return `the ${year.slice(0, 3)}0s`;
  if (month === null || month === "XX") return year;
  const name = SEASONS[month] ?? monthName(Number(month));
  if (name === "") return `${year}-${month}`;
  return day === null || day === "XX" ? `${name} ${year}` : `${Number(day)} ${name} ${year}`;
}

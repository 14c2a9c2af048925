import { isClosed, type Line, low, type Read } from "./line";
import { isAdjacent } from "./tokens";

const MONTHS = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];
const SHORT = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const SEASONS: Record<string, string> = { spring: "21", summer: "22", autumn: "23", fall: "23", winter: "24" };

/** The month (1 to 12) that token `at` names. A lower-case "may" is the verb unless a number stands beside it. */
export function monthAt(line: Line, at: number): number | null {
  const token = line.tokens[at];
  if (token === undefined || token.kind !== "word") return null;
  const name = token.low === "sept" ? "sep" : token.low;
  const month = (MONTHS.indexOf(name) >= 0 ? MONTHS.indexOf(name) : SHORT.indexOf(name)) + 1;
  if (month === 0) return null;
  const beside =
    isNumber(line, at + 1) || isNumber(line, at - 1) || isOrdinalEnd(line, at - 1) || low(line, at - 1) === "of";
  return ["may", "march", "mar"].includes(token.text) && !beside ? null : month;
}

/** EDTF code of the season that token `at` names. */
export function seasonAt(line: Line, at: number): string | null {
  return SEASONS[low(line, at)] ?? null;
}

/** Reads a day of a month without a year: "12 May", "12th of May", "May 12th"; or "in May", "early May", "end of May" (day null). */
export function readDayOfYear(line: Line, at: number): Read<{ month: number; day: number | null }> | null {
  const first = dayNumberAt(line, at);
  if (first !== null) {
    const monthPlace = low(line, first.end) === "of" ? first.end + 1 : first.end;
    const month = monthAt(line, monthPlace);
    return month === null ? null : { end: stopEnd(line, monthPlace + 1), month, day: first.day };
  }
  let start = at;
  if (["early", "mid", "late"].includes(low(line, start))) start += 1;
  else if (["end", "beginning", "middle", "start"].includes(low(line, start)) && low(line, start + 1) === "of")
    start += 2;
  const month = monthAt(line, start);
  if (month === null) return null;
  const day = dayNumberAt(line, stopEnd(line, start + 1));
  // "in May 12 plants" has no day
  const isBeforeYear = day !== null && /^(?:1[789]|20)\d{2}$/.test(line.tokens[day.end]?.text ?? "");
  return day === null || !(isClosed(line, day.end) || isBeforeYear)
    ? { end: stopEnd(line, start + 1), month, day: null }
    : { end: day.end, month, day: day.day };
}

function dayNumberAt(line: Line, at: number): Read<{ day: number }> | null {
  const token = line.tokens[at];
  if (token?.kind !== "number" || !/^\d{1,2}$/.test(token.text)) return null;
  const day = token.number ?? 0;
  if (day < 1 || day > 31) return null;
  return { end: isOrdinalEnd(line, at + 1) ? at + 2 : at + 1, day };
}

function isOrdinalEnd(line: Line, at: number): boolean {
  return ["st", "nd", "rd", "th"].includes(low(line, at)) && isAdjacent(line.tokens, at);
}

/** The stop of "Sept." belongs to the month where something follows it. */
function stopEnd(line: Line, at: number): number {
  return low(line, at) === "." && isAdjacent(line.tokens, at) && line.tokens[at + 1]?.kind === "number" ? at + 1 : at;
}

function isNumber(line: Line, at: number): boolean {
  return line.tokens[at]?.kind === "number";
}

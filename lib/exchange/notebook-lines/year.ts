import { parseDate } from "@/lib/science/dates/parse-date";
import { monthAt, readDayOfYear, seasonAt } from "./calendar-words";
import { decadeAt } from "./decade";
import { isClosed, type Line, low, type Read } from "./line";
import { readNumber } from "./number-words";
import type { Certainty } from "./reading";
import { isAdjacent } from "./tokens";

export interface YearRead {
  readonly end: number;
  /** null for what the registry's dates cannot say ("before 1960") */
  readonly edtf: string | null;
  readonly certainty: Certainty;
  readonly relative: boolean;
}

const ABOUT = new Set(["about", "around", "circa", "ca", "c", "roughly", "approx", "approximately", "~"]);
const UNSURE = new Set(["maybe", "perhaps", "possibly", "probably"]);
/** Words that follow a year at the head of a line: "96 nothing sown", "94 my aunt's jar". */
const OPENINGS = new Set(
  (
    "nothing no none not did didn't rested skipped sowed sown sow planted grew grown got kept saved gave lost mixed tested pulled rogued came my our the a about only just had " +
    "swapped bought split lent sent"
  ).split(" "),
);
const SEED_NOUNS = new Set(["seed", "lot", "jar", "harvest", "crop", "stock", "packet", "tin", "batch"]);

/**
 * Reads a year, or a fuzzy one, from token `at`: 1994, '94, about 1960, early eighties, 1987-91, spring of 88,
 * 12 May 1990, 1991 or 92, since 1987, next year. With `bare` two digits alone are a year as well ("94, from...").
 */
export function readYear(line: Line, at: number, bare = false): YearRead | null {
  const relative = readRelativeYear(line, at);
  if (relative !== null) return relative;
  let [start, about, unsure] = [at, false, false];
  for (; start < at + 3; start += 1) {
    if (ABOUT.has(low(line, start))) about = true;
    else if (UNSURE.has(low(line, start))) unsure = true;
    else if (!(low(line, start) === "." && start > at)) break;
  }
  const core = readSpan(line, start, bare) ?? readPoint(line, start, bare);
  if (core === null) return null;
  const tail = tailMarks(line, core.end);
  const mark = markOf(about || tail.about, unsure || tail.unsure);
  // an EDTF text carries its own mark, an interval takes none here
  const marked = core.edtf !== null && mark !== "" && /[\dX]$/.test(core.edtf) && !core.edtf.includes("/");
  return { ...core, end: tail.end, edtf: marked ? `${core.edtf}${mark}` : core.edtf };
}

function markOf(about: boolean, unsure: boolean): string {
  if (about && unsure) return "%";
  return about ? "~" : unsure ? "?" : "";
}

function tailMarks(line: Line, at: number): { end: number; about: boolean; unsure: boolean } {
  const pair = `${low(line, at)} ${low(line, at + 1)}`;
  if (pair === "or so" || pair === "or thereabouts") return { end: at + 2, about: true, unsure: false };
  if (low(line, at) === "ish" || pair === "- ish")
    return { end: at + (low(line, at) === "ish" ? 1 : 2), about: true, unsure: false };
  if (pair === "i think" || pair === "i believe" || pair === "i guess")
    return { end: at + 2, about: false, unsure: true };
  if (low(line, at) === "(" && low(line, at + 1) === "?" && low(line, at + 2) === ")")
    return { end: at + 3, about: false, unsure: true };
  if (low(line, at) === "?" && isAdjacent(line.tokens, at)) return { end: at + 1, about: false, unsure: true };
  return { end: at, about: false, unsure: false };
}

/** Two years: "1987-91", "1987 to 1991", "between 1987 and 1991", "1991 or 92", "winter 1987/88", "since 1987", "before 1960". */
function readSpan(line: Line, at: number, bare: boolean): YearRead | null {
  const opening = low(line, at);
  if (["before", "after"].includes(opening)) {
    const year = plainYear(line, at + 1, false);
    return year === null ? null : { end: year.end, edtf: null, certainty: "doubtful", relative: false };
  }
  if (opening === "since") {
    const year = plainYear(line, at + 1, false);
    return year === null
      ? null
      : { end: year.end, edtf: `${year.year}/..`, certainty: year.certainty, relative: false };
  }
  const isBetween = opening === "between";
  const season = seasonAt(line, at);
  const start = isBetween || season !== null || (opening === "from" && !bare) ? at + 1 : at;
  const first = plainYear(
    line,
    low(line, start) === "of" && season !== null ? start + 1 : start,
    bare || season !== null,
  );
  if (first === null) return null;
  const joint = low(line, first.end);
  const within = isBetween ? joint === "and" : joint === "or";
  if (!within && (isBetween || !["-", "–", "—", "/", "to", "till", "until"].includes(joint))) return null;
  // "84 - 35 plants" has its year before the dash
  if (first.digits === 2 && !/^[a-z]/.test(joint) && !isAdjacent(line.tokens, first.end)) return null;
  const second = closingYear(line, first.end + 1, first.year);
  // "30-40 plants" is no span of years, "2003-04" is written like a month
  if (second === null) return null;
  const isBare = second.short && line.tokens[first.end + 1]?.kind !== "short-year" && !isOpening(line, second.end);
  if (isBare && first.digits === 2 && !isSplitSeason(line, at)) return null;
  // "2024 - 35 g on hand"
  if (isBare && !/^[a-z]/.test(joint) && !isAdjacent(line.tokens, first.end)) return null;
  if (joint === "-" && first.digits === 4 && second.short && second.year % 100 <= 12) return null;
  const certainty = second.short || first.certainty !== "sure" ? "likely" : "sure";
  // a winter runs into the next year and is named by the first
  if (season !== null) {
    const isWinter = season === "24" && second.year === first.year + 1;
    return isWinter ? { end: second.end, edtf: `${first.year}-24`, certainty, relative: false } : null;
  }
  const edtf = within ? `[${first.year}..${second.year}]` : `${first.year}/${second.year}`;
  return { end: second.end, edtf, certainty, relative: false };
}

/** Whether a two-digit year can end before token `at`: at an end, or before a word that follows a year ("87-91 nothing sown"). */
function isOpening(line: Line, at: number): boolean {
  return isClosed(line, at) || OPENINGS.has(low(line, at));
}

function closingYear(line: Line, at: number, first: number): Read<{ year: number; short: boolean }> | null {
  const token = line.tokens[at];
  const digits = token?.kind === "number" ? token.text : token?.kind === "short-year" ? token.text.slice(1) : "";
  if (!/^(?:\d|\d{2}|\d{4})$/.test(digits)) return null;
  const year = Number(`${String(first).slice(0, 4 - digits.length)}${digits}`);
  return year > first && year - first <= 99 && isPlausible(year, line)
    ? { end: at + 1, year, short: digits.length < 4 }
    : null;
}

function readPoint(line: Line, at: number, bare: boolean): YearRead | null {
  return readEdtfChunk(line, at) ?? readDated(line, at) ?? decadeAt(line, at) ?? readPlain(line, at, bare);
}

const CHUNK = /\[?\d{2,4}X{0,2}[\dX~?%/.\-[\]]*/y;

/** A date typed as the registry writes it: `1991~`, `198X`, `1987-05`, `1987/1991`, `[1987..1991]`. */
function readEdtfChunk(line: Line, at: number): YearRead | null {
  const token = line.tokens[at];
  if (token === undefined) return null;
  CHUNK.lastIndex = token.from;
  const chunk = CHUNK.exec(line.text)?.[0].replace(/[.\-/]+$/, "") ?? "";
  // a plain year is read by the other readers, which look at what follows
  if (chunk === "" || /^\d+$/.test(chunk) || !/\d{4}|X/.test(chunk)) return null;
  const parsed = parseDate(chunk);
  const end = tokenAfter(line, at, token.from + chunk.length);
  if (!parsed.ok || end === null || !isPlausible(Number(parsed.value.first.slice(0, 4)), line)) return null;
  return { end, edtf: chunk, certainty: chunkCertainty(chunk), relative: false };
}

/** "1998-02" is a month; "2003-04" can be two years as well. */
function chunkCertainty(chunk: string): Certainty {
  if (!/^\d{4}-\d{2}$/.test(chunk)) return "sure";
  return Number(chunk.slice(5)) > Number(chunk.slice(2, 4)) ? "doubtful" : "likely";
}

/** The token that begins at or after a place of the text; null where a token lies across it. */
function tokenAfter(line: Line, at: number, place: number): number | null {
  let end = at;
  for (let token = line.tokens[end]; token !== undefined && token.from < place; token = line.tokens[end]) {
    if (token.to > place) return null;
    end += 1;
  }
  return end;
}

/** "12 May 1990", "May 1990", "spring of 88", "20/5/1987". */
function readDated(line: Line, at: number): YearRead | null {
  const token = line.tokens[at];
  // 5/1990
  const month =
    token?.kind === "number" && /^\d{1,2}$/.test(token.text) && low(line, at + 1) === "/" ? token.number : null;
  const monthYear = month !== null && month >= 1 && month <= 12 ? plainYear(line, at + 2, false) : null;
  if (monthYear !== null && monthYear.digits === 4) {
    return { end: monthYear.end, edtf: `${monthYear.year}-${two(month ?? 1)}`, certainty: "likely", relative: false };
  }
  const short = isMonthAndShortYear(line, at) ? century(line.tokens[at + 2]?.number ?? 0, line) : null;
  if (short !== null)
    return { end: at + 3, edtf: `${short}-${two(token?.number ?? 1)}`, certainty: "doubtful", relative: false };
  if (token?.kind === "date") return readWrittenDate(line, at, token.text);
  const season = seasonAt(line, ["early", "late", "mid"].includes(low(line, at)) ? at + 1 : at);
  if (season !== null) {
    const start = ["early", "late", "mid"].includes(low(line, at)) ? at + 2 : at + 1;
    const year = plainYear(line, low(line, start) === "of" ? start + 1 : start, true);
    return year === null
      ? null
      : { end: year.end, edtf: `${year.year}-${season}`, certainty: year.certainty, relative: false };
  }
  const day = readDayOfYear(line, at);
  if (day === null) return null;
  // "May 88": what stands after the month can be its day or the year
  const isMonthFirst = monthAt(line, at) !== null;
  const alone = isMonthFirst ? plainYear(line, at + 1, true) : null;
  if (alone !== null && alone.end >= day.end && (alone.digits === 4 || day.day === null)) {
    return { end: alone.end, edtf: `${alone.year}-${two(day.month)}`, certainty: alone.certainty, relative: false };
  }
  const yearPlace = [",", "of"].includes(low(line, day.end)) ? day.end + 1 : day.end;
  const year = plainYear(line, yearPlace, low(line, day.end) !== ",");
  if (year === null) return null;
  const edtf = day.day === null ? `${year.year}-${two(day.month)}` : `${year.year}-${two(day.month)}-${two(day.day)}`;
  return parseDate(edtf).ok ? { end: year.end, edtf, certainty: year.certainty, relative: false } : null;
}

/** Numbers of seeds that people test; "12/50" is then a test and no December. */
const TESTED_OF = new Set([40, 48, 50, 60, 70, 75, 80, 90, 96]);

/** "5/94": a month and a short year, where it can be neither a day nor a test of so many seeds. */
export function isMonthAndShortYear(line: Line, at: number): boolean {
  const [month, joint, year] = [line.tokens[at], low(line, at + 1), line.tokens[at + 2]];
  if (joint !== "/" || month?.kind !== "number" || year?.kind !== "number" || !isAdjacent(line.tokens, at + 2))
    return false;
  if (!/^\d{1,2}$/.test(month.text) || !/^\d{2}$/.test(year.text)) return false;
  const [first, second] = [Number(month.text), Number(year.text)];
  return first >= 1 && first <= 12 && second >= 32 && !TESTED_OF.has(second);
}

function readWrittenDate(line: Line, at: number, text: string): YearRead | null {
  const [a = 0, b = 0, written = 0] = text.split(/[./]/).map(Number);
  const year = /\d{4}$/.test(text) ? written : century(written, line);
  if (!isPlausible(year, line)) return null;
  const [day, month] = b > 12 ? [b, a] : [a, b];
  const edtf = `${year}-${two(month)}-${two(day)}`;
  // 5/6/87 is a day in May or in June: the year alone is certain
  if (a <= 12 && b <= 12 && a !== b) return { end: at + 1, edtf: String(year), certainty: "likely", relative: false };
  return parseDate(edtf).ok
    ? { end: at + 1, edtf, certainty: /\d{4}$/.test(text) ? "sure" : "likely", relative: false }
    : null;
}

function readPlain(line: Line, at: number, bare: boolean): YearRead | null {
  const year = plainYear(line, at, bare);
  if (year === null) return null;
  // "30-40" that is no span of years is no year either
  const isRange =
    ["-", "–", "/"].includes(low(line, year.end)) &&
    isAdjacent(line.tokens, year.end) &&
    line.tokens[year.end + 1]?.kind === "number";
  if (year.digits === 2 && line.tokens[at]?.kind === "number" && isRange) return null;
  return { end: year.end, edtf: String(year.year), certainty: year.certainty, relative: false };
}

/** Four digits that can be a year, `'94`, "nineteen ninety-four", and with `bare` two digits. */
export function plainYear(
  line: Line,
  at: number,
  bare: boolean,
): Read<{ year: number; certainty: Certainty; digits: number }> | null {
  const token = line.tokens[at];
  if (token === undefined) return null;
  if (token.kind === "number" && /^\d{4}$/.test(token.text)) {
    const year = Number(token.text);
    return isPlausible(year, line) ? { end: at + 1, year, certainty: "sure", digits: 4 } : null;
  }
  if (token.kind === "short-year")
    return { end: at + 1, year: century(token.number ?? 0, line), certainty: "likely", digits: 2 };
  if (token.kind === "number" && /^\d{2}$/.test(token.text) && canBeBareYear(line, at, bare)) {
    return { end: at + 1, year: century(Number(token.text), line), certainty: "likely", digits: 2 };
  }
  if (token.low === "nineteen" || token.low === "eighteen") {
    const rest = readNumber(line.tokens, at + 1);
    if (rest === null || rest.value < 10 || rest.value > 99) return null;
    return { end: rest.end, year: (token.low === "nineteen" ? 1900 : 1800) + rest.value, certainty: "sure", digits: 4 };
  }
  return null;
}

/** Two digits alone are a year before seed ("the 91 seed") and, where asked for, before an end ("94, from..."). */
function canBeBareYear(line: Line, at: number, bare: boolean): boolean {
  if (SEED_NOUNS.has(low(line, at + 1))) return true;
  if (!bare) return false;
  if (isClosed(line, at + 1)) return true;
  return at === 0 && ((OPENINGS.has(low(line, 1)) && !hasDateOfItsOwn(line)) || isSplitSeason(line, at));
}

/** "40 sown 3rd May 2026": what was done has its own date of another year, so that the number before it is a count. */
function hasDateOfItsOwn(line: Line): boolean {
  const from = ["on", "in", "about", "out"].includes(low(line, 2)) ? 3 : 2;
  const date = readEdtfChunk(line, from) ?? readDated(line, from);
  const written = /\b\d{4}\b/.exec(line.text)?.[0];
  if (!date?.edtf || !written || !date.edtf.startsWith(written)) return false;
  return written.slice(2) !== line.tokens[0]?.text;
}

/** "92/3" and "92/93" at the head of a line: a season that runs into the next year; "11/12" can be a day as well. */
function isSplitSeason(line: Line, at: number): boolean {
  const [first, joint, second] = [line.tokens[at], low(line, at + 1), line.tokens[at + 2]];
  if (at > 0 || joint !== "/" || first?.kind !== "number" || second?.kind !== "number") return false;
  if (!/^\d{2}$/.test(first.text) || !/^\d{1,2}$/.test(second.text) || Number(first.text) < 12) return false;
  const next = Number(first.text) + 1;
  return next % 10 ** second.text.length === Number(second.text);
}

/** "next year", "the year after", "same year", "two years later": counted from the nearest earlier line with an exact year. */
function readRelativeYear(line: Line, at: number): YearRead | null {
  const step = relativeStep(line, at);
  if (step === null || line.previousYear === null) return null;
  return { end: step.end, edtf: String(line.previousYear + step.years), certainty: "likely", relative: true };
}

function relativeStep(line: Line, at: number): Read<{ years: number }> | null {
  const start = low(line, at) === "the" || low(line, at) === "that" ? at + 1 : at;
  const [first, second, third] = [low(line, start), low(line, start + 1), low(line, start + 2)];
  if (["next", "following"].includes(first) && second === "year") return { end: start + 2, years: 1 };
  if (first === "year" && second === "after" && third !== "that") return { end: start + 2, years: 1 };
  if (first === "same" && second === "year") return { end: start + 2, years: 0 };
  if (first === "year" && second === "later") return { end: start + 2, years: 1 };
  const number = readNumber(line.tokens, at);
  if (
    number !== null &&
    ["year", "years"].includes(low(line, number.end)) &&
    ["later", "on"].includes(low(line, number.end + 1))
  ) {
    return Number.isInteger(number.value) && number.value < 100 ? { end: number.end + 2, years: number.value } : null;
  }
  return null;
}

/** The full year of two digits: the latest that is not after this year; without one, 00 to 29 are the 2000s. */
export function century(twoDigits: number, line: Line): number {
  const latest = line.thisYear ?? 2029;
  const year = latest - (latest % 100) + twoDigits;
  return year > latest ? year - 100 : year;
}

function isPlausible(year: number, line: Line): boolean {
  return year >= 1700 && year <= (line.thisYear ?? 2098) + 1;
}

function two(number: number): string {
  return String(number).padStart(2, "0");
}

import { recogniseSpreadsheetDate } from "./spreadsheet-date";

const MONTHS = "jan feb mar apr may jun jul aug sep oct nov dec".split(" ");
const MONTH =
  "jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?";
const SEASONS: Readonly<Record<string, string>> = {
  spring: "21",
  summer: "22",
  autumn: "23",
  fall: "23",
  winter: "24",
};
/** "the twenties" may be those of either century. */
const DECADES: Readonly<Record<string, string>> = {
  thirties: "193",
  forties: "194",
  fifties: "195",
  sixties: "196",
  seventies: "197",
  eighties: "198",
  nineties: "199",
};
const PARTS: Readonly<Record<string, readonly [number, number]>> = { early: [0, 3], mid: [4, 6], late: [7, 9] };

type Form = readonly [shape: RegExp, edtf: (parts: readonly string[]) => string | null];

const FORMS: readonly Form[] = [
  [/^(\d{4})$/, ([year = ""]) => year],
  [new RegExp(`^(${MONTH})\\.?,? (?:of )?(\\d{4})$`), ([month, year]) => `${year}-${numberOf(month)}`],
  [
    new RegExp(`^(\\d{1,2})(?:st|nd|rd|th)? (?:of )?(${MONTH})\\.?,? (\\d{4})$`),
    ([day, month, year]) => `${year}-${numberOf(month)}-${two(day)}`,
  ],
  [
    new RegExp(`^(${MONTH})\\.? (\\d{1,2})(?:st|nd|rd|th)?,? (\\d{4})$`),
    ([month, day, year]) => `${year}-${numberOf(month)}-${two(day)}`,
  ],
  [/^(spring|summer|autumn|fall|winter)(?: of)? (\d{4})$/, ([season = "", year]) => `${year}-${SEASONS[season]}`],
  [/^(?:the )?(?:(early|mid|late)[ -](?:the )?)?(\d{3})0'?s$/, ([part, decade = ""]) => decadeOf(decade, part)],
  [
    /^(?:in )?(?:the )?(?:(early|mid|late)[ -](?:the )?)?([a-z]+ies)$/,
    ([part, name = ""]) => (DECADES[name] === undefined ? null : decadeOf(DECADES[name], part)),
  ],
  [/^(?:between )?(\d{4}) (?:or|and) (\d{4})$/, ([from, to]) => `[${from}..${to}]`],
  [/^(?:from )?(\d{4}) (?:to|till|until) (\d{4})$/, ([from, to]) => `${from}/${to}`],
  [/^since (\d{4})$/, ([from]) => `${from}/..`],
];

const ABOUT = /^(?:about|around|roughly|circa|approximately|approx\.?|ca?\.?|~) ?(?=[\da-z])/;
const ABOUT_BEHIND = / ?(?:or so|or thereabouts|-?ish)$/;
const UNSURE = /^(?:maybe|perhaps|possibly|probably) /;
const UNSURE_BEHIND = /(?:,? i think|,? i believe| ?\(\?\))$/;
/** Day and month in digits, with the year in full: a person at a form means a day, where it can be one alone. */
const IN_DIGITS = /^(?:\d{1,2}[/.]\d{1,2}[/.]\d{4}|\d{4}[-/.]\d{1,2}[-/.]\d{1,2}|\d{1,2}[/.]\d{4})$/;

/**
 * The date that a person has written in words or in the manner of their country, as EDTF (ISO 8601-2): "June 1994", "about 1960",
 * "the early eighties", "spring 1988", "between 1987 and 1991", "20/5/1987". Null where it may mean several dates (5/6/1987, '87,
 * "the twenties") or none: nothing is guessed. Whether the day is in the calendar is for `parseDate`.
 * The early years of a decade are its first four, the middle ones 4 to 6, the late ones 7 to 9.
 */
export function dateFromWords(text: string): string | null {
  const whole = text.normalize("NFC").replaceAll("’", "'").replace(/\s+/g, " ").trim().toLowerCase();
  const sure = whole.replace(UNSURE, "").replace(UNSURE_BEHIND, "");
  const exact = sure.replace(ABOUT, "").replace(ABOUT_BEHIND, "");
  const edtf = inDigits(exact) ?? inWords(exact);
  if (edtf === null) return null;
  const [isUnsure, isAbout] = [sure !== whole, exact !== sure];
  const mark = isAbout && isUnsure ? "%" : isAbout ? "~" : isUnsure ? "?" : "";
  // A span takes no mark of its own.
  return mark !== "" && /[/\]]/.test(edtf) ? null : `${edtf}${mark}`;
}

function inWords(text: string): string | null {
  for (const [shape, edtf] of FORMS) {
    const found = shape.exec(text);
    if (found !== null) return edtf(found.slice(1));
  }
  return null;
}

function inDigits(text: string): string | null {
  const probably = IN_DIGITS.test(text) ? (recogniseSpreadsheetDate(text)?.probably ?? []) : [];
  const [only, other] = probably;
  return other === undefined ? (only ?? null) : null;
}

function decadeOf(decade: string, part: string | undefined): string {
  const years = PARTS[part ?? ""];
  return years === undefined ? `${decade}X` : `[${decade}${years[0]}..${decade}${years[1]}]`;
}

function numberOf(month: string | undefined): string {
  return two(String(MONTHS.indexOf((month ?? "").slice(0, 3)) + 1));
}

function two(number: string | undefined): string {
  return (number ?? "").padStart(2, "0");
}

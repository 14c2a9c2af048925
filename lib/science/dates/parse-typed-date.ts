import { type Outcome, type Refusal, refusal, refused } from "../outcome";
import { dateFromWords } from "./date-from-words";
import type { FuzzyDate } from "./fuzzy-date";
import { type ParseDateOptions, parseDate } from "./parse-date";
import { recogniseSpreadsheetDate } from "./spreadsheet-date";

/**
 * Reads a date that a person types into a form: as the registry writes it (EDTF), or in words that mean one date alone ("June 1994",
 * "about 1960"). Refused as by `parseDate`, of what was typed and in a person's words. Files are read by that one, which keeps to what
 * they are agreed to hold.
 */
export function parseTypedDate(text: string, options: ParseDateOptions = {}): Outcome<FuzzyDate> {
  const read = parseDate(text, options);
  if (read.ok) return read;
  const edtf = dateFromWords(text);
  const meant = edtf === null ? read : parseDate(edtf, options);
  return meant.ok ? meant : refused(...read.refusals.map((each) => ofTyped(each, text.trim())));
}

/** No spreadsheet stands between a person and a form. */
function ofTyped(fault: Refusal, text: string): Refusal {
  const { code, path, needed } = fault;
  if (code === "date-not-edtf") {
    return refusal(code, path, text, "is not a date", "write it as 1987, June 1994, 20 May 1987 or about 1960");
  }
  if (code !== "date-changed-by-a-spreadsheet") return fault;
  const isOneOfTwo = (recogniseSpreadsheetDate(text)?.probably.length ?? 0) > 1;
  const wrong = isOneOfTwo ? "can mean more than one day" : "is not quite a date";
  return refusal("date-ambiguous", path, text, wrong, needed);
}

import type { Outcome } from "../outcome";
import { dateFromWords } from "./date-from-words";
import type { FuzzyDate } from "./fuzzy-date";
import { type ParseDateOptions, parseDate } from "./parse-date";

/**
 * Reads a date that a person types into a form: as the registry writes it (EDTF), or in words that mean one date alone ("June 1994",
 * "about 1960"). Refused as by `parseDate`, of what was typed. Files are read by that one, which keeps to what they are agreed to hold.
 */
export function parseTypedDate(text: string, options: ParseDateOptions = {}): Outcome<FuzzyDate> {
  const read = parseDate(text, options);
  const edtf = read.ok ? null : dateFromWords(text);
  const meant = edtf === null ? read : parseDate(edtf, options);
  return meant.ok ? meant : read;
}

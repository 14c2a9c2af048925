import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { count, day, decimal, type FieldReader, neededField, oneOf, openField, words } from "../lots/form-fields";

/** Words that may be left empty. */
export const optionalWords = openField(words);

/** Words that must be there. `needed` says what to write. */
export const neededWords = (needed: string) => neededField(words, needed);

/** A number of 0 or more, with a decimal point or comma; may be left empty. */
export const optionalAmount = openField(decimal({ atLeast: 0 }));

/** A whole number of 1 or more; may be left empty. */
export const optionalCount = openField(count);

/** A date as sharp or vague as it is known (EDTF); may be left empty. */
export const optionalDate = (hemisphere: Hemisphere) => openField(day(hemisphere));

/** One of a few words; may be left empty. */
export function optionalChoice<const Words extends readonly string[]>(choices: Words) {
  const read: FieldReader<Words[number]> = oneOf(choices);
  return openField(read);
}

/** One of a few words. */
export function neededChoice<const Words extends readonly string[]>(choices: Words) {
  const read: FieldReader<Words[number]> = oneOf(choices);
  return neededField(read, `choose ${choices.join(", ")}`);
}

import { z } from "zod";
import { parseDate } from "@/lib/science/dates/parse-date";

/** Words that may be left empty: outer blanks go, nothing written is null. Line breaks stay. */
export const optionalWords = z
  .string()
  .optional()
  .transform((text) => {
    const words = (text ?? "").replaceAll("\r\n", "\n").trim();
    return words === "" ? null : words;
  });

/** Words that must be there. `needed` says what to write. */
export function neededWords(needed: string) {
  return z.string(`is missing; ${needed}`).trim().min(1, `is empty; ${needed}`);
}

const decimal = /^\d+(?:[.,]\d+)?$/;

/** A number of 0 or more as it is typed, with a decimal point or comma; empty is null. */
export const optionalAmount = z
  .string()
  .trim()
  .optional()
  .transform((text, context) => {
    if (text === undefined || text === "") return null;
    if (decimal.test(text)) return Number(text.replace(",", "."));
    context.addIssue({ code: "custom", message: "is not a number; write figures alone, such as 12 or 12.5" });
    return z.NEVER;
  });

/** A whole number of 1 or more as it is typed; empty is null. */
export const optionalCount = z
  .string()
  .trim()
  .optional()
  .transform((text, context) => {
    if (text === undefined || text === "") return null;
    if (/^\d{1,9}$/.test(text) && Number(text) >= 1) return Number(text);
    context.addIssue({ code: "custom", message: "is not a whole number; write figures alone, such as 40" });
    return z.NEVER;
  });

/** A date as sharp or vague as it is known (EDTF), with its first and last possible day; empty is null. */
export const optionalDate = z
  .string()
  .trim()
  .optional()
  .transform((text, context) => {
    if (text === undefined || text === "") return null;
    const date = parseDate(text);
    if (date.ok) return { text: date.value.text, first: date.value.first, last: date.value.last };
    const [fault] = date.refusals;
    context.addIssue({
      code: "custom",
      message: `is not a date; ${fault?.needed ?? "write it as 1987 or 1987-05-20"}`,
    });
    return z.NEVER;
  });

/** One of a few words; empty is null. */
export function optionalChoice<const T extends readonly [string, ...string[]]>(choices: T) {
  return z
    .string()
    .optional()
    .transform((text, context): T[number] | null => {
      if (text === undefined || text === "") return null;
      const found = choices.find((choice) => choice === text);
      if (found !== undefined) return found;
      context.addIssue({ code: "custom", message: `is none of the choices; take ${choices.join(", ")}` });
      return z.NEVER;
    });
}

/** Why something that was written is changed; the registry asks for it where a change replaces words. */
export const reason = optionalWords;

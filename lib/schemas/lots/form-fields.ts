import { z } from "zod";
import type { FuzzyDate, Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { parseTypedDate } from "@/lib/science/dates/parse-typed-date";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { readDecimal } from "../notebook/decimal";

/*
 * Fields of a form: text as it was typed becomes a value, or a refusal that says what stands there and what would be right.
 * A field left empty is not known (null), unless it is needed.
 */

/** Reads text that is not empty; the refusal's path is that of the field. */
export type FieldReader<T> = (text: string) => Outcome<T>;

/** A field that may be left empty. */
export function openField<T>(read: FieldReader<T>) {
  return z
    .string()
    .optional()
    .transform((text, context): T | null => (isEmpty(text) ? null : readInto(text, read, context)));
}

/** A field that must be filled in; `needed` says with what. */
export function neededField<T>(read: FieldReader<T>, needed: string) {
  return z
    .string()
    .optional()
    .transform((text, context): T => {
      if (!isEmpty(text)) return readInto(text, read, context);
      return fault(context, refusal("missing", [], "", "stands here", needed));
    });
}

export const words: FieldReader<string> = (text) => accepted(text.trim());

/** A name: trimmed, Unicode NFC, each run of blanks one blank. */
export const name: FieldReader<string> = (text) => accepted(text.normalize("NFC").replace(/\s+/g, " ").trim());

/** A date as the registry writes it, or as a person does ("June 1994", "about 1960"), where that means one date alone. */
export function day(hemisphere: Hemisphere): FieldReader<FuzzyDate> {
  return (text) => parseTypedDate(text, { hemisphere });
}

/** A decimal with point or comma; a comma before three digits could part thousands and is refused. */
export function decimal(limits: { readonly atLeast?: number; readonly above?: number; readonly atMost?: number }) {
  return (text: string): Outcome<number> => {
    const read = readDecimal(text, /,\d{3}$/.test(text.trim()) ? "." : ",");
    if (!read.ok) return read;
    const { atLeast, above, atMost } = limits;
    if (above !== undefined && read.value <= above)
      return refused(refusal("too-small", [], read.value, "is too small", `write a number above ${above}`));
    if (atLeast !== undefined && read.value < atLeast)
      return refused(refusal("too-small", [], read.value, "is too small", `write ${atLeast} or more`));
    if (atMost !== undefined && read.value > atMost)
      return refused(refusal("too-large", [], read.value, "is too large", `write at most ${atMost}`));
    return read;
  };
}

/** A whole count, 1 or more. */
export const count: FieldReader<number> = (text) => {
  const read = readDecimal(text, ",");
  if (!read.ok) return read;
  if (Number.isInteger(read.value) && read.value >= 1 && read.value <= 2_147_483_647) return read;
  return refused(refusal("not-a-count", [], read.value, "is not a count", "write a whole number, 1 or more"));
};

export function oneOf<const Words extends readonly string[]>(choices: Words): FieldReader<Words[number]> {
  return (text) => {
    const found = choices.find((choice) => choice === text.trim());
    if (found !== undefined) return accepted(found);
    return refused(refusal("not-one-of", [], text, "is none of the choices", `choose ${choices.join(", ")}`));
  };
}

/** A box that was ticked. */
export const ticked = z
  .string()
  .optional()
  .transform((text) => text === "yes");

/** A form's fields as an operation takes them, or one refusal for each field that is not right. */
export function parseForm<S extends z.ZodType>(
  schema: S,
  typed: Readonly<Record<string, unknown>>,
): Outcome<z.output<S>> {
  const parsed = schema.safeParse(typed);
  if (parsed.success) return accepted(parsed.data);
  return refused(...parsed.error.issues.map(asRefusal));
}

function isEmpty(text: string | undefined): text is undefined {
  return text === undefined || text.trim() === "";
}

function readInto<T>(text: string, read: FieldReader<T>, context: z.RefinementCtx): T {
  const outcome = read(text);
  if (outcome.ok) return outcome.value;
  for (const each of outcome.refusals) fault(context, each);
  return z.NEVER;
}

function fault(context: z.RefinementCtx, each: Refusal): never {
  context.addIssue({ code: "custom", message: each.sentence, params: { refusal: each } });
  return z.NEVER;
}

function asRefusal(issue: z.core.$ZodIssue): Refusal {
  const path = issue.path.map((step) => (typeof step === "symbol" ? String(step) : step));
  const own = issue.code === "custom" ? (issue.params?.refusal as Refusal | undefined) : undefined;
  if (own) return { ...own, path };
  return refusal("shape", path, issue.input, "does not fit here", issue.message);
}

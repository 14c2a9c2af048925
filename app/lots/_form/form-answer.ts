import type { Outcome, Refusal } from "@/lib/science/outcome";

/** What a form's action answers: what was typed and why it was refused, or where it leads when it is done. */
export interface FormAnswer {
  readonly typed: Readonly<Record<string, string>>;
  readonly refusals: readonly Refusal[];
  readonly done: string | null;
}

/** An action of a form, as React calls it. */
export type FormDeed = (before: FormAnswer, form: FormData) => Promise<FormAnswer>;

/** The texts of a form, without files and without the framework's own fields. */
export function textsOf(form: FormData): Record<string, string> {
  const texts: Record<string, string> = {};
  for (const [name, value] of form) if (typeof value === "string" && !name.startsWith("$")) texts[name] = value;
  return texts;
}

/** What was ticked of several boxes named `prefix` and their key. A box that is not ticked may be sent as well, empty: only "yes" is a tick. */
export function tickedOf(typed: Readonly<Record<string, string>>, prefix: string): string[] {
  return Object.entries(typed).flatMap(([name, value]) =>
    name.startsWith(prefix) && value === "yes" ? [name.slice(prefix.length)] : [],
  );
}

/** The answer to an operation: where it leads when it was done, else what was typed with the refusals. */
export function answerOf<T>(
  typed: Readonly<Record<string, string>>,
  outcome: Outcome<T>,
  leadsTo: (value: T) => string,
): FormAnswer {
  return outcome.ok
    ? { typed: {}, refusals: [], done: leadsTo(outcome.value) }
    : { typed, refusals: outcome.refusals, done: null };
}

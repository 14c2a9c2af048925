import type { FieldEntry } from "@/lib/registry/grow-outs/field-entry";
import type { Assumption, Outcome, Refusal } from "@/lib/science/outcome";

/** What an evening form's action answers: what was typed and why it was refused, or what was written down. */
export interface FieldAnswer {
  readonly typed: Readonly<Record<string, string>>;
  readonly refusals: readonly Refusal[];
  readonly written: { readonly said: string; readonly warnings: readonly string[] } | null;
}

export type FieldDeed = (before: FieldAnswer, form: FormData) => Promise<FieldAnswer>;

/** The answer to an operation in the field. */
export function fieldAnswer(
  typed: Readonly<Record<string, string>>,
  outcome: Outcome<{ readonly value: Pick<FieldEntry, "warnings"> }>,
  said: string,
): FieldAnswer {
  if (!outcome.ok) return { typed, refusals: outcome.refusals, written: null };
  return { typed: {}, refusals: [], written: { said, warnings: outcome.value.value.warnings.map(warningSentence) } };
}

/** Warnings that say what is to be done, not only what looks odd. */
const toDo: ReadonlySet<string> = new Set(["bitter", "suspected-cross", "males-before-pass", "timing-not-said"]);

function warningSentence({ code, text }: Assumption): string {
  const said = toDo.has(code) ? text : `it stands, but looks odd: ${text}`;
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}${/[.?!]$/.test(said) ? "" : "."}`;
}

import type { FieldEntry } from "@/lib/registry/grow-outs/record-stage-counts";
import type { Outcome, Refusal } from "@/lib/science/outcome";

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
  return { typed: {}, refusals: [], written: { said, warnings: outcome.value.value.warnings.map(({ text }) => text) } };
}

import { fieldName, refusalSentence } from "@/lib/display/refusals";
import type { Refusal } from "@/lib/science/outcome";
import type { FormAnswer } from "./field-spec";

/** The answer to a form that was refused: each refusal at its field, and everything that was typed. */
export function refusedForm(refusals: readonly Refusal[], typed: Readonly<Record<string, string>>): FormAnswer {
  return {
    refusals: refusals.map((refusal) => ({ field: fieldName(refusal.path), sentence: refusalSentence(refusal) })),
    typed,
  };
}

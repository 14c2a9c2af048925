import type { Path, Refusal } from "@/lib/science/outcome";

/** The name of the form's field that a path leads to: `replicates.0.sown`; the whole form is the empty name. */
export function fieldName(path: Path): string {
  return path.join(".");
}

/** A refusal as a sentence of a form: a capital at its head, a full stop at its end. */
export function refusalSentence(refusal: Refusal): string {
  const text = refusal.sentence.trim();
  const head = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(head) ? head : `${head}.`;
}

/** The sentences for each field by its name, in the order they came. */
export function refusalsByField(refusals: readonly Refusal[]): Record<string, string[]> {
  const fields: Record<string, string[]> = {};
  for (const refusal of refusals) {
    const name = fieldName(refusal.path);
    fields[name] = [...(fields[name] ?? []), refusalSentence(refusal)];
  }
  return fields;
}

/** The same for the summary at the head of a form; `labels` give a field's words by its name. */
export function refusalsForSummary(
  refusals: readonly Refusal[],
  labels: Readonly<Record<string, string>> = {},
): { sentence: string; name?: string; label?: string }[] {
  return refusals.map((refusal) => {
    const name = fieldName(refusal.path);
    const sentence = refusalSentence(refusal);
    return name === "" ? { sentence } : { sentence, name, label: labels[name] };
  });
}

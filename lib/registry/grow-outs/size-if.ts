import { countsInStep, type StepNumbers, spokenOf, stepFields } from "./counts-in-step";
import type { FieldEvents } from "./field-records";
import type { SizeGround } from "./size-so-far";

/**
 * The ground of a grow-out's size as it would be with further counts and passes, or with others in the place of some (`without`, by id).
 * Nothing is stored: it is what a form shows while it is typed.
 */
export function groundWith(
  ground: SizeGround,
  entries: Partial<FieldEvents>,
  without: ReadonlySet<string> = new Set(),
): SizeGround {
  const staying = <R extends { readonly id: string }>(rows: readonly R[]) => rows.filter((row) => !without.has(row.id));
  const is = {
    counts: [...staying(ground.counts), ...(entries.counts ?? [])],
    passes: [...staying(ground.passes), ...(entries.passes ?? [])],
  };
  const now = Object.fromEntries(stepFields.map((field) => [field, ground.record[field]])) as unknown as StepNumbers;
  const patch = countsInStep(now, ground, is, spokenOf(entries));
  return { ...ground, ...is, record: { ...ground.record, ...patch } };
}

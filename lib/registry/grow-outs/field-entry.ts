import { type Assumption, accepted, type Outcome, type Path, refused } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";
import type { StepField } from "./counts-in-step";
import type { FieldEvents } from "./field-records";
import { fieldWarnings } from "./field-warnings";
import type { InField } from "./in-field";
import { keepInStep } from "./keep-in-step";

/** What an entry of counts, passes or flowering notes leaves. */
export interface FieldEntry {
  readonly growOutId: string;
  readonly ids: readonly string[];
  /** what looks odd about them; they stand all the same */
  readonly warnings: readonly Assumption[];
}

/** Ends an entry of counts or passes that is written: the grow-out's numbers follow, or are refused, and what looks odd is told. */
export async function entered(
  change: ChangeWriter,
  field: InField,
  is: FieldEvents,
  rows: readonly { readonly id: string }[],
  spoken: ReadonlySet<StepField>,
  at: Path,
): Promise<Outcome<FieldEntry>> {
  const apart = await keepInStep(change, field, is, spoken, at);
  if (apart.length > 0) return refused(...apart);
  change.touch(field.row.varietyId);
  const warnings = fieldWarnings({ ...field, ...is });
  return accepted({
    growOutId: field.row.id,
    ids: rows.map(({ id }) => id),
    warnings: rows.flatMap(({ id }) => warnings.get(id) ?? []),
  });
}

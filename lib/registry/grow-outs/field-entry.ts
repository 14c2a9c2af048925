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

/** Where a record was made on a phone: its clock as it stood there, and its place among that phone's records. */
export interface FromPhone {
  readonly recordedAt: string;
  readonly recordedOffset: number;
  readonly deviceId: string;
  readonly deviceSequence: number;
}

/** How rows are entered. */
export interface Entering {
  /** where refusals lead */
  readonly at?: Path;
  /** false: a person said that they stand, though a rule speaks against them */
  readonly judged?: boolean;
}

/**
 * Ends an entry of counts or passes that is written: the grow-out's numbers follow, or are refused, and what looks odd is told. What is not
 * judged stands also where the numbers cannot follow.
 */
export async function entered(
  change: ChangeWriter,
  field: InField,
  is: FieldEvents,
  rows: readonly { readonly id: string }[],
  spoken: ReadonlySet<StepField>,
  { at = [], judged = true }: Entering,
): Promise<Outcome<FieldEntry>> {
  const apart = await keepInStep(change, field, is, spoken, at);
  if (judged && apart.length > 0) return refused(...apart);
  change.touch(field.row.varietyId);
  const warnings = fieldWarnings({ ...field, ...is });
  return accepted({
    growOutId: field.row.id,
    ids: rows.map(({ id }) => id),
    warnings: rows.flatMap(({ id }) => warnings.get(id) ?? []),
  });
}

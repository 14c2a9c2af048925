import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import type { PatchOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import { countsInStep, type StepField, type StepNumbers, stepFields } from "./counts-in-step";
import type { FieldEvents } from "./field-records";
import type { InField } from "./in-field";
import { writtenNumbers } from "./written-numbers";

/**
 * Brings the grow-out's numbers into step with its events after an entry, in the same change set. Refused (nothing is written then) where
 * the numbers could not be together: more pulled than stood, or fewer left than gave seed.
 */
export async function keepInStep(
  change: ChangeWriter,
  { row, counts, passes, growOut }: InField,
  is: FieldEvents,
  spoken: ReadonlySet<StepField>,
  at: Path,
): Promise<Refusal[]> {
  const now = numbersOf(row);
  const written = await writtenNumbers(change.tx, row.id);
  const patch = countsInStep(now, { counts, passes }, is, spoken, written);
  const next = { ...now, ...patch };
  if (Object.keys(patch).length === 0) return [];
  const faults = togetherFaults(next, row.seedParents, growOut.separate, at);
  // What could not be together before is not the fault of this entry.
  if (faults.length > 0 && togetherFaults(now, row.seedParents, growOut.separate, at).length === 0) return faults;
  await change.update("GrowOut", row.id, patch as PatchOf<"GrowOut">);
  return [];
}

/** The numbers of a grow-out's row. */
export function numbersOf(row: StepNumbers): StepNumbers {
  return Object.fromEntries(stepFields.map((field) => [field, row[field]])) as unknown as StepNumbers;
}

function togetherFaults(next: StepNumbers, seedParents: number | null, separate: boolean, at: Path): Refusal[] {
  const { plantsStanding: stood, roguedBeforePollen, roguedAfterPollen, malesStanding } = next;
  if (stood === null) return [];
  const pulled = (roguedBeforePollen ?? 0) + (roguedAfterPollen ?? 0);
  if (pulled > stood) {
    const wrong = `pulled in all is more than the ${stood} that stood before the first pass`;
    return [refusal("more-rogued-than-stood", at, pulled, wrong, "put the count or the passes right")];
  }
  const left = stood - pulled - (separate ? (malesStanding ?? 0) : 0);
  if (seedParents === null || seedParents <= left) return [];
  const wrong = `would be left, and ${seedParents} seed parents are on record`;
  return [refusal("fewer-left-than-gave-seed", at, left, wrong, "put the count or the harvest right")];
}

import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import type { GrowOutInField } from "./count-faults";
import { pulledBefore } from "./counts-in-step";
import { dayFaults } from "./day-faults";
import { type CountOnRecord, inOrderOfDays, type PassOnRecord, surelyBefore } from "./field-records";

/** A walk through the plants as it is typed in: what was looked at, and what was pulled for which reason. */
export interface Walk {
  readonly on: string;
  readonly onFirst: string;
  readonly onLast: string;
  readonly looked: number | null;
  readonly pulled: number;
  readonly left: number | null;
}

/** What is wrong with a walk beside what stands: what cannot be, not what is only odd. */
export function walkFaults(
  walk: Walk,
  others: readonly PassOnRecord[],
  counts: readonly CountOnRecord[],
  growOut: GrowOutInField,
  at: Path = [],
): Refusal[] {
  const faults = dayFaults(walk, growOut, [...at, "on"]);
  const { looked, pulled, left } = walk;
  const wrong = (field: string, given: number | null, says: string, needed: string) =>
    faults.push(refusal("cannot-be", [...at, field], given, says, needed));
  if (looked !== null && pulled > looked)
    wrong("pulled", pulled, `pulled is more than the ${looked} looked at`, "write how many were looked at");
  if (looked === null && pulled === 0) {
    const needed = "write how many plants were looked at: not looked is not none found";
    faults.push(refusal("not-looked", [...at, "looked"], null, "was looked at and none pulled", needed));
  }
  if (left !== null && looked !== null && left < looked - pulled)
    wrong("left", left, `is less than the ${looked - pulled} looked at and not pulled`, "write how many still stand");
  const here = stoodAt(walk, others, counts);
  if (here === null) return faults;
  if (pulled > here) wrong("pulled", pulled, `pulled is more than the ${here} that stood`, "count the plants again");
  else if (looked !== null && looked > here)
    wrong("looked", looked, `is more than the ${here} that stood`, "write how many were looked at, or count again");
  else if (left !== null && left > here - pulled)
    wrong("left", left, `is more than the ${here - pulled} that can be left`, "write how many still stand");
  return faults;
}

/** How many stood when a walk began, by the last count before it; null where none was counted before. */
export function stoodAt(
  walk: Omit<Walk, "looked" | "pulled" | "left">,
  passes: readonly PassOnRecord[],
  counts: readonly CountOnRecord[],
): number | null {
  const stood = inOrderOfDays(counts).findLast(
    (count) =>
      ["thinned", "replanted", "standing", "flowering"].includes(count.stage) &&
      count.onLast !== null &&
      count.onLast <= walk.onFirst,
  );
  if (!stood) return null;
  const between = passes.filter((pass) => surelyBefore(pass, walk)).reduce((sum, pass) => sum + pass.pulled, 0);
  return stood.plants - (between - pulledBefore(stood, passes));
}

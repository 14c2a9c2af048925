import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import type { GrowOutInField } from "./count-faults";
import type { Seen } from "./field-records";

/** A day on which nothing can have been seen: before the sowing, or not yet come. */
export function dayFaults(
  { on, onFirst, onLast }: Omit<Seen, "id">,
  { sown, sownFirst, today }: Pick<GrowOutInField, "sown" | "sownFirst" | "today">,
  at: Path,
): Refusal[] {
  if (on === null || onFirst === null || onLast === null) return [];
  if (onFirst > today)
    return [refusal("not-yet", at, on, "has not come yet", "write the day in the field, not after today")];
  if (sownFirst === null || onLast >= sownFirst) return [];
  return [
    refusal("before-sowing", at, on, `lies before the sowing (${sown})`, "write a day after it, or put that right"),
  ];
}

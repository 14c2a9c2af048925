import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { day, decimal, neededField, oneOf, openField, words } from "../lots/form-fields";
import { readDecimal } from "../notebook/decimal";

/** How bags that were kept apart become one jar: the same of each, as evenly as an amount allows, or the whole of each. */
export const waysTogether = ["equal", "as even as can be", "all"] as const;

/** Bags of a harvest put together. */
export function putTogetherSchema(hemisphere: Hemisphere) {
  return z.object({
    on: neededField(day(hemisphere), "write the day, or what is known of it, as 2026-11-02 or 2026-11"),
    way: neededField(oneOf(waysTogether), "choose how they are put together"),
    /** of equal parts: how many of the smallest bags are left out */
    leftOut: openField(countOfBags),
    /** as even as can be: how much in all */
    wanted: openField(decimal({ above: 0 })),
    note: openField(words),
  });
}

export type PutTogetherInput = z.output<ReturnType<typeof putTogetherSchema>>;

function countOfBags(text: string): Outcome<number> {
  const read = readDecimal(text, ",");
  if (!read.ok) return read;
  if (Number.isInteger(read.value) && read.value >= 0) return accepted(read.value);
  return refused(refusal("not-a-count", [], read.value, "is not a count of bags", "choose one of the list"));
}

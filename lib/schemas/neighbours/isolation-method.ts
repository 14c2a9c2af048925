import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { evidenceWords, isolationMethods } from "@/lib/science/isolation/isolation-grade";
import { day, neededField, oneOf, openField, words } from "../lots/form-fields";

/** What was done to keep other pollen off, how that is known, and from when to when. */
export function isolationMethodSchema(hemisphere: Hemisphere) {
  return z.object({
    method: neededField(oneOf(isolationMethods), "choose what was done"),
    evidence: openField(oneOf(evidenceWords)),
    fromOn: openField(day(hemisphere)),
    toOn: openField(day(hemisphere)),
    note: openField(words),
  });
}

export type IsolationMethodInput = z.output<ReturnType<typeof isolationMethodSchema>>;

import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { moments } from "../grow-outs/field-kinds";
import { day, neededField, oneOf, openField, words } from "../lots/form-fields";

/** What of a neighbour is noted: that it flowers, or, as of maize, that it sheds pollen. */
export const neighbourOrgans = ["flower", "pollen"] as const;

/** A day on which a neighbour source was seen in flower. */
export function neighbourFloweringSchema(hemisphere: Hemisphere) {
  return z.object({
    organ: neededField(oneOf(neighbourOrgans), "choose what was seen"),
    moment: neededField(oneOf(moments), "choose first, half or last"),
    on: neededField(day(hemisphere), "write the day it was seen, as 2026-07-12"),
    note: openField(words),
  });
}

export type NeighbourFloweringInput = z.output<ReturnType<typeof neighbourFloweringSchema>>;

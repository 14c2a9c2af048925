import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { deskUnits } from "../ledger/ledger-entry";
import { day, decimal, name, neededField, oneOf, openField, words } from "../lots/form-fields";

const part = z.object({
  lot: openField(name),
  /** left empty: not written; 0: none of it was sown after all */
  amount: openField(decimal({ atLeast: 0 })),
  unit: neededField(oneOf(deskUnits), "choose grams or seeds"),
});

/** What was taken out of the jars and sown. Lots are named by their ids. */
export function sowGrowOutSchema(hemisphere: Hemisphere) {
  return z.object({
    on: neededField(day(hemisphere), "write the day of sowing, or what is known of it"),
    parts: z.array(part),
    /** why it is sown although something stands against it */
    override: openField(words),
    note: openField(words),
  });
}

export type SowGrowOutInput = z.output<ReturnType<typeof sowGrowOutSchema>>;
export type SownPart = SowGrowOutInput["parts"][number];

import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { count, day, decimal, openField, words } from "../lots/form-fields";

/** How many counted portions the form offers at once. */
export const portionsAtOnce = 4;

/** Portions of seed that were counted and weighed. A portion left empty is none. */
export function seedWeighingSchema(hemisphere: Hemisphere) {
  return z.object({
    on: openField(day(hemisphere)),
    counts: z.array(z.object({ seeds: openField(count), grams: openField(decimal({ above: 0 })) })),
    note: openField(words),
  });
}

export type SeedWeighingInput = z.output<ReturnType<typeof seedWeighingSchema>>;

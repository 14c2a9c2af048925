import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { day, neededField, oneOf, openField, words } from "../lots/form-fields";

/** How a grow-out ends. `stands` says that it is not over after all. */
export const growOutEnds = ["seed kept", "no seed", "failed", "not sown", "stands"] as const;
export type GrowOutEnd = (typeof growOutEnds)[number];

/** The end of a grow-out, and why. */
export function endGrowOutSchema(hemisphere: Hemisphere) {
  return z.object({
    end: neededField(oneOf(growOutEnds), "choose how it ended"),
    endedOn: openField(day(hemisphere)),
    cause: openField(words),
  });
}
export type EndGrowOutInput = z.output<ReturnType<typeof endGrowOutSchema>>;

import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { day, neededField, ticked } from "../lots/form-fields";

/** That somebody looked for neighbours, and whether there was none. */
export function lookSchema(hemisphere: Hemisphere) {
  return z.object({
    on: neededField(day(hemisphere), "write the day, or what is known of it, as 2026-06-12 or 2026-06"),
    noneFound: ticked,
  });
}

export type LookInput = z.output<ReturnType<typeof lookSchema>>;

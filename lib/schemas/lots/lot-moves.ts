import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { comparisons } from "../transfers/transfer";
import { day, name, neededField, oneOf, openField, ticked, words } from "./form-fields";
import { lotStatuses } from "./record-lot";

const whenDone = "write the day, or what is known of it, as 2024-05-20, 2024-05 or 2024";

/** A lot that goes on in its life: from quarantine to usable, on hold, finished, discarded. */
export function moveLotSchema(hemisphere: Hemisphere) {
  return z.object({
    status: neededField(oneOf(lotStatuses), "choose how it stands from now on"),
    on: neededField(day(hemisphere), whenDone),
    reason: neededField(words, "say why, and who saw it"),
  });
}

export type MoveLotInput = z.output<ReturnType<typeof moveLotSchema>>;

/** How a lot stands that was found the same as the home strain, or a strain of its own. */
export const releasedStatuses = ["usable", "share freely", "circle only"] as const;

/** What was decided of a lot in quarantine once it was grown apart and compared. */
export function decideSchema(hemisphere: Hemisphere) {
  return z.object({
    found: neededField(oneOf(comparisons), "choose what was found"),
    on: neededField(day(hemisphere), whenDone),
    how: neededField(words, "say what was compared, and who saw it"),
    status: openField(oneOf(releasedStatuses)),
    /** of a strain of its own: its name, on record or new */
    strain: openField(name),
    difference: openField(words),
    /** it was grown apart, though no grow-out of it is on record */
    grownUnrecorded: ticked,
    /** ids of open questions that this answers */
    answers: z.array(z.string()).default([]),
  });
}

export type DecideInput = z.output<ReturnType<typeof decideSchema>>;

import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { bearings } from "@/lib/science/isolation/bearings";
import { evidenceWords } from "@/lib/science/isolation/isolation-grade";
import { count, day, decimal, neededField, oneOf, openField, words } from "../lots/form-fields";

/** Farther than this no pollen is asked after: metres. */
const farthest = 100_000;

/** A neighbour source of a grow-out as it is typed in; the distance in the steward's unit. */
export function neighbourSchema(hemisphere: Hemisphere) {
  return z.object({
    what: neededField(words, "say what grows there, as wild carrot or sweet maize"),
    crop: openField(words),
    variety: openField(words),
    plot: openField(words),
    distance: openField(decimal({ atLeast: 0, atMost: farthest })),
    bearing: openField(oneOf(bearings)),
    sizeM2: openField(decimal({ above: 0 })),
    plants: openField(count),
    windowFirst: openField(day(hemisphere)),
    windowLast: openField(day(hemisphere)),
    howSure: openField(oneOf(evidenceWords)),
    note: openField(words),
  });
}

type Typed = z.output<ReturnType<typeof neighbourSchema>>;

/** A neighbour source with its distance in metres; crop, variety and plot by their ids. */
export type NeighbourInput = Omit<Typed, "distance"> & { readonly distanceMetres: number | null };

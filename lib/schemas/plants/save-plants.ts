import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { day, neededField, openField, words } from "../lots/form-fields";

/** A column of the grid: a field of the plant or its mark, or a trait by the id of its first version. */
export const traitColumn = (traitId: string) => `trait:${traitId}` as const;

/** The trait that a column is of; null where it is no trait's. */
export function traitOfColumn(column: string): string | null {
  return column.startsWith("trait:") ? column.slice("trait:".length) : null;
}

const mostRows = 5000;
const cellText = z.string().max(4000);

const row = z.object({
  /** the plant's id, or a key of its own for a plant that is new */
  key: z.string().min(1).max(80),
  /** true where the plant is new */
  added: z.boolean(),
  cells: z.record(z.string().max(80), z.object({ text: cellText, was: cellText })),
});

/**
 * What one save of the grid sends: the day it was seen and who scored, and each changed cell as typed, with what stood in it when it was
 * read (so that what somebody else wrote meanwhile is not written over).
 */
export function savePlantsSchema(hemisphere: Hemisphere) {
  return z.object({
    on: neededField(day(hemisphere), "write the day in the field, as 2024-08-20 or 2024-08"),
    stewardId: openField(words),
    rows: z.array(row).min(1).max(mostRows),
  });
}

export type SavePlantsInput = z.output<ReturnType<typeof savePlantsSchema>>;
export type SavedRow = SavePlantsInput["rows"][number];

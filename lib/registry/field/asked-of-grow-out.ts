import { type Selection, sql } from "@/lib/db";

/** The kind of a question that a record from the field raises. */
export const fromField = "record from the field";

/** The kind of a question whether two records are one plant. */
export const samePlant = "same plant";

/** How many questions that came home from the field wait for a person, of one grow-out; one row. */
export function askedSelection(growOutId: string): Selection<{ asked: number }> {
  return {
    columns: { asked: "number" },
    rows: sql`
      SELECT COUNT(*) AS "asked" FROM "Question" q
      WHERE q."growOutId" = ${growOutId} AND q."answeredAt" IS NULL AND q."kind" IN (${fromField}, ${samePlant})`,
  };
}

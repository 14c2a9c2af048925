import { type Selection, sql } from "@/lib/db";
import type { OpenMatter } from "./records";

/** Questions without an answer and warnings that are not closed, in the order in which they came. */
export const openMatters: Selection<OpenMatter> = {
  columns: {
    id: "text",
    kind: "text",
    sentence: "text",
    day: "text",
    varietyId: "text",
    lotId: "text",
    growOutId: "text",
    testId: "text",
  },
  rows: sql`
    SELECT q."id", 'question' AS "kind", q."sentence", q."raisedAt" AS "day", q."varietyId",
           COALESCE(l."sameAsId", l."id") AS "lotId", q."growOutId", q."testId"
    FROM "Question" q LEFT JOIN "Lot" l ON l."id" = q."lotId" WHERE q."answeredAt" IS NULL
    UNION ALL
    SELECT w."id", 'warning' AS "kind", w."reason" AS "sentence", w."on" AS "day", w."varietyId",
           COALESCE(m."sameAsId", m."id"), NULL AS "growOutId", NULL AS "testId"
    FROM "Warning" w LEFT JOIN "Lot" m ON m."id" = w."lotId" WHERE w."closedOn" IS NULL
    ORDER BY 1`,
};

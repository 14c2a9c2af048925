import { type Selection, sql } from "@/lib/db";
import { fromField, samePlant } from "../field/asked-of-grow-out";
import type { OpenMatter } from "./records";

/**
 * Questions without an answer and warnings that are not closed, in the order in which they came. Those from the field are one matter a grow-out: a
 * phone whose clock was wrong raises one for each record.
 */
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
    FROM "Question" q LEFT JOIN "Lot" l ON l."id" = q."lotId" WHERE q."answeredAt" IS NULL AND q."kind" NOT IN (${fromField}, ${samePlant})
    UNION ALL
    SELECT MIN(f."id"), 'field', CASE WHEN COUNT(*) = 1 THEN MIN(f."sentence")
             ELSE 'from the field, ' || CAST(COUNT(*) AS TEXT) || ' questions of grow-out ' || g."name" END,
           MIN(f."raisedAt"), g."varietyId", NULL, g."id", NULL
    FROM "Question" f JOIN "GrowOut" g ON g."id" = f."growOutId"
    WHERE f."answeredAt" IS NULL AND f."kind" IN (${fromField}, ${samePlant}) GROUP BY g."id", g."name", g."varietyId"
    UNION ALL
    SELECT w."id", 'warning' AS "kind", w."reason" AS "sentence", w."on" AS "day", w."varietyId",
           COALESCE(m."sameAsId", m."id"), NULL AS "growOutId", NULL AS "testId"
    FROM "Warning" w LEFT JOIN "Lot" m ON m."id" = w."lotId" WHERE w."closedOn" IS NULL
    ORDER BY 1`,
};

import { type Selection, sql } from "@/lib/db";
import type { OpenTest } from "./records";

/**
 * The germination tests that are not over: not counted, or counted before their last day with seeds left. What was corrected or taken back
 * does not count.
 */
export const openTests: Selection<OpenTest> = {
  columns: {
    id: "text",
    name: "text",
    lotId: "text",
    on: "text",
    onFirst: "text",
    onLast: "text",
    finalCountDay: "number",
    counts: "number",
    lastCountDay: "number",
  },
  rows: sql`
    SELECT t."id", t."name", COALESCE(MAX(l."sameAsId"), t."lotId") AS "lotId", t."on", t."onFirst", t."onLast", t."finalCountDay",
           COUNT(c."id") AS "counts", MAX(c."day") AS "lastCountDay"
    FROM "GerminationTest" t JOIN "Lot" l ON l."id" = t."lotId"
    LEFT JOIN "TestReplicate" r ON r."testId" = t."id"
    LEFT JOIN "TestCount" c ON c."replicateId" = r."id" AND NOT c."takenBack"
      AND NOT EXISTS (SELECT 1 FROM "TestCount" n WHERE n."replacesId" = c."id")
    GROUP BY t."id"
    HAVING COUNT(c."id") = 0 OR (t."finalCountDay" IS NOT NULL AND MAX(c."day") < t."finalCountDay" AND
      SUM(c."normal" + COALESCE(c."abnormal", 0) + COALESCE(c."hard", 0) + COALESCE(c."fresh", 0) + COALESCE(c."dead", 0)) <
      (SELECT SUM(s."sown") FROM "TestReplicate" s WHERE s."testId" = t."id"))
    ORDER BY t."id"`,
};

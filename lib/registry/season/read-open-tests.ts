import type { Database } from "@/lib/db";
import type { OpenTest } from "./records";

type Row = Omit<OpenTest, "counts"> & { readonly counts: number | bigint };

// Tests that have no count yet, or whose last day is still to come while seeds are left. What was corrected or taken back does not count.
const openTests = `
  SELECT t."id", t."name", t."lotId", t."on", t."onFirst", t."onLast", t."finalCountDay",
         COUNT(c."id") AS "counts", MAX(c."day") AS "lastCountDay"
  FROM "GerminationTest" t
  LEFT JOIN "TestReplicate" r ON r."testId" = t."id"
  LEFT JOIN "TestCount" c ON c."replicateId" = r."id" AND NOT c."takenBack"
    AND NOT EXISTS (SELECT 1 FROM "TestCount" n WHERE n."replacesId" = c."id")
  GROUP BY t."id"
  HAVING COUNT(c."id") = 0 OR (t."finalCountDay" IS NOT NULL AND MAX(c."day") < t."finalCountDay" AND
    SUM(c."normal" + COALESCE(c."abnormal", 0) + COALESCE(c."hard", 0) + COALESCE(c."fresh", 0) + COALESCE(c."dead", 0)) <
    (SELECT SUM(s."sown") FROM "TestReplicate" s WHERE s."testId" = t."id"))
  ORDER BY t."id"`;

/** The germination tests that are not over: not counted, or counted before their last day with seeds left. One statement. */
export async function readOpenTests(db: Database): Promise<OpenTest[]> {
  const rows = await db.read.$queryRawUnsafe<Row[]>(openTests);
  return rows.map((row) => ({ ...row, counts: Number(row.counts) }));
}

import type { Database } from "@/lib/db";
import type { OpenMatter } from "./records";

const openMatters = `
  SELECT q."id", 'question' AS "kind", q."sentence", q."raisedAt" AS "day", q."varietyId", q."lotId", q."growOutId", q."testId"
  FROM "Question" q WHERE q."answeredAt" IS NULL
  UNION ALL
  SELECT w."id", 'warning' AS "kind", w."reason" AS "sentence", w."on" AS "day", w."varietyId", w."lotId", NULL AS "growOutId", NULL AS "testId"
  FROM "Warning" w WHERE w."closedOn" IS NULL
  ORDER BY 1`;

/** Questions without an answer and warnings that are not closed, in the order in which they came. One statement. */
export async function readOpenMatters(db: Database): Promise<OpenMatter[]> {
  return db.read.$queryRawUnsafe<OpenMatter[]>(openMatters);
}

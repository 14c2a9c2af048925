import { type Client, sql } from "@/lib/db";

/** The ids of a test, of its replicates and of all their counts, also those that count no more, for its history. One statement. */
export async function idsOfTest(db: Client, testId: string): Promise<string[]> {
  const rows = await db.$queryRaw<{ id: string }[]>(sql`
    SELECT t."id" FROM "GerminationTest" t WHERE t."id" = ${testId}
    UNION ALL SELECT r."id" FROM "TestReplicate" r WHERE r."testId" = ${testId}
    UNION ALL SELECT c."id" FROM "TestCount" c JOIN "TestReplicate" r ON r."id" = c."replicateId" WHERE r."testId" = ${testId}`);
  return rows.map((row) => row.id);
}

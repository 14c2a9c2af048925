import type { Client } from "@/lib/db";

/** The ids of a lot and of all that belongs to it, for its history. One statement. */
export async function idsOfLot(db: Client, lotId: string): Promise<string[]> {
  const rows = await db.$queryRaw<{ id: string }[]>`
    SELECT ${lotId} AS "id"
    UNION ALL SELECT e."id" FROM "LedgerEntry" e WHERE e."lotId" = ${lotId}
    UNION ALL SELECT t."id" FROM "GerminationTest" t WHERE t."lotId" = ${lotId}
    UNION ALL SELECT w."id" FROM "SeedWeighing" w WHERE w."lotId" = ${lotId}
    UNION ALL SELECT c."id" FROM "Container" c WHERE c."lotId" = ${lotId}
    UNION ALL SELECT p."id" FROM "LotParent" p WHERE p."lotId" = ${lotId}
    UNION ALL SELECT m."id" FROM "LotMaking" m WHERE m."lotId" = ${lotId}
    UNION ALL SELECT m."id" FROM "MoistureReading" m WHERE m."lotId" = ${lotId}
    UNION ALL SELECT s."id" FROM "Story" s WHERE s."lotId" = ${lotId}
    UNION ALL SELECT o."id" FROM "Observation" o WHERE o."lotId" = ${lotId}
    UNION ALL SELECT w."id" FROM "Warning" w WHERE w."lotId" = ${lotId}`;
  return rows.map((row) => row.id);
}

import { type Client, sql } from "@/lib/db";
import { recordsOfLot } from "./same-lot";

/** The ids of a lot, of all its records and of all that belongs to them, for its history. One statement. */
export async function idsOfLot(db: Client, lotId: string): Promise<string[]> {
  const these = recordsOfLot(lotId);
  const rows = await db.$queryRaw<{ id: string }[]>(sql`
    SELECT r."id" FROM "Lot" r WHERE r."id" IN ${these}
    UNION ALL SELECT e."id" FROM "LedgerEntry" e WHERE e."lotId" IN ${these}
    UNION ALL SELECT t."id" FROM "GerminationTest" t WHERE t."lotId" IN ${these}
    UNION ALL SELECT r."id" FROM "TestReplicate" r JOIN "GerminationTest" t ON t."id" = r."testId" WHERE t."lotId" IN ${these}
    UNION ALL SELECT c."id" FROM "TestCount" c JOIN "TestReplicate" r ON r."id" = c."replicateId"
      JOIN "GerminationTest" t ON t."id" = r."testId" WHERE t."lotId" IN ${these}
    UNION ALL SELECT w."id" FROM "SeedWeighing" w WHERE w."lotId" IN ${these}
    UNION ALL SELECT c."id" FROM "Container" c WHERE c."lotId" IN ${these}
    UNION ALL SELECT p."id" FROM "LotParent" p WHERE p."lotId" IN ${these}
    UNION ALL SELECT m."id" FROM "LotMaking" m WHERE m."lotId" IN ${these}
    UNION ALL SELECT m."id" FROM "MoistureReading" m WHERE m."lotId" IN ${these}
    UNION ALL SELECT d."id" FROM "Drying" d WHERE d."lotId" IN ${these}
    UNION ALL SELECT s."id" FROM "Story" s WHERE s."lotId" IN ${these}
    UNION ALL SELECT o."id" FROM "Observation" o WHERE o."lotId" IN ${these}
    UNION ALL SELECT w."id" FROM "Warning" w WHERE w."lotId" IN ${these}
    UNION ALL SELECT c."id" FROM "LineageClaim" c WHERE c."lotId" IN ${these}
    UNION ALL SELECT k."id" FROM "FounderKinship" k WHERE k."firstId" IN ${these} OR k."secondId" IN ${these}`);
  return rows.map((row) => row.id);
}

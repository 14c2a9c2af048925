import { type Selection, sql } from "@/lib/db";
import type { SeasonScoredPlants } from "./records";

/**
 * Plants of grow-outs of which no seed is taken and no end written, as far as they are scored, with what their newest standing mark says. Records that a
 * person said are one plant are one.
 */
export const scoredPlants: Selection<SeasonScoredPlants> = {
  columns: { growOutId: "text", scored: "number", kept: "number" },
  rows: sql`
    SELECT w."growOutId", COUNT(*) AS "scored", SUM(CASE WHEN w."intent" = 'keep' THEN 1 ELSE 0 END) AS "kept" FROM (
      SELECT p."growOutId", (SELECT m."intent" FROM "Mark" m JOIN "Plant" q ON q."id" = m."plantId"
          WHERE COALESCE(q."sameAsId", q."id") = p."id" AND q."growOutId" = p."growOutId"
            AND NOT EXISTS (SELECT 1 FROM "Mark" n WHERE n."replacesId" = m."id") ORDER BY m."id" DESC LIMIT 1) AS "intent"
      FROM "Plant" p JOIN "GrowOut" g ON g."id" = p."growOutId"
      WHERE p."sameAsId" IS NULL AND g."outcome" IS NULL AND g."endedOn" IS NULL
        AND NOT EXISTS (SELECT 1 FROM "Harvest" h WHERE h."growOutId" = g."id")
        AND NOT EXISTS (SELECT 1 FROM "Lot" l WHERE l."growOutId" = g."id")
        AND EXISTS (SELECT 1 FROM "Score" s JOIN "Plant" q ON q."id" = s."plantId"
          WHERE COALESCE(q."sameAsId", q."id") = p."id" AND q."growOutId" = p."growOutId" AND NOT s."takenBack"
            AND NOT EXISTS (SELECT 1 FROM "Score" r WHERE r."replacesId" = s."id"))
    ) w GROUP BY w."growOutId" ORDER BY w."growOutId"`,
};

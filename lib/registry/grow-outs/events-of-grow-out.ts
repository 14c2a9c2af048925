import { type Selection, sql } from "@/lib/db";

/** Something that was seen or done in a grow-out on a day. What is not of its kind is null. */
export interface EventOfGrowOut {
  readonly id: string;
  readonly kind: "count" | "rogues" | "flowering" | "isolation" | "neighbour";
  readonly on: string | null;
  /** stage of a count or pass, moment of flowering, method of isolation, what the neighbour is */
  readonly what: string | null;
  /** before or after pollen shed; organ that flowered; bearing of a neighbour */
  readonly how: string | null;
  /** plants counted; plants looked at; plants of a neighbour */
  readonly plants: number | null;
  /** plants pulled; metres to a neighbour */
  readonly amount: number | null;
  readonly note: string | null;
  readonly stewardId: string | null;
}

interface Row extends EventOfGrowOut {
  readonly day: string | null;
}

/** What was counted, pulled, seen in flower, done for isolation and found near by. */
export function eventsSelection(growOutId: string): Selection<Row> {
  return {
    columns: {
      id: "text",
      kind: "text",
      on: "text",
      what: "text",
      how: "text",
      plants: "number",
      amount: "number",
      note: "text",
      stewardId: "text",
      day: "text",
    },
    // A count, pass or note that was corrected does not stand: the one that points to it does.
    rows: sql`
  SELECT s."id", 'count' AS "kind", s."on", s."stage" AS "what", s."thinnedBy" AS "how", s."plants" AS "plants", CAST(NULL AS REAL) AS "amount",
         s."note", s."stewardId", s."onFirst" AS "day"
  FROM "StageCount" s WHERE s."growOutId" = ${growOutId} AND NOT EXISTS (SELECT 1 FROM "StageCount" n WHERE n."replacesId" = s."id")
  UNION ALL
  SELECT p."id", 'rogues', p."on", p."stage", p."timing", p."looked", CAST(p."pulled" AS REAL), COALESCE(p."reason", p."note"), p."stewardId", p."onFirst"
  FROM "RoguePass" p WHERE p."growOutId" = ${growOutId} AND NOT EXISTS (SELECT 1 FROM "RoguePass" n WHERE n."replacesId" = p."id")
  UNION ALL
  SELECT f."id", 'flowering', f."on", f."moment", f."organ", NULL, NULL, f."note", f."stewardId", f."onFirst"
  FROM "FloweringNote" f WHERE f."growOutId" = ${growOutId} AND NOT EXISTS (SELECT 1 FROM "FloweringNote" n WHERE n."replacesId" = f."id")
  UNION ALL
  SELECT i."id", 'isolation', i."fromOn", i."method", i."evidence", NULL, NULL, i."note", NULL, i."fromOn"
  FROM "IsolationMethod" i WHERE i."growOutId" = ${growOutId}
  UNION ALL
  SELECT b."id", 'neighbour', NULL, b."what", b."bearing", b."plants", CAST(b."distanceMetres" AS REAL), b."note", NULL, b."windowFirst"
  FROM "NeighbourSource" b WHERE b."growOutId" = ${growOutId}`,
  };
}

/** The events in the order of days; those without a day last. */
export function eventsInOrder(rows: readonly Row[]): EventOfGrowOut[] {
  return [...rows]
    .sort((a, b) => compare(a.day ?? "9999", b.day ?? "9999") || compare(a.id, b.id))
    .map(({ day: _day, ...event }) => event);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

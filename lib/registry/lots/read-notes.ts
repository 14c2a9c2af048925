import { type Selection, sql } from "@/lib/db";
import { recordsOfLot } from "./same-lot";

/** Something told, seen or measured of a lot, beside its ledger and tests. */
export interface NoteOfLot {
  readonly what: "story" | "observation" | "warning" | "question" | "weighing" | "moisture" | "making";
  readonly id: string;
  /** when, as written; of a question the instant it was raised */
  readonly on: string | null;
  readonly words: string | null;
  /** who told, saw or raised it */
  readonly who: string | null;
  /** seeds weighed; percent moisture; the measured value */
  readonly value: number | null;
  /** grams weighed; percent relative humidity */
  readonly second: number | null;
  /** unit of the value; method of the reading; how a warning was closed; the answer to a question; blend or split */
  readonly more: string | null;
  /** a warning that was closed, a question that was answered */
  readonly closed: string | null;
}

/** Stories, observations, warnings, questions, weighings and moisture readings of a lot in the order of entry. */
export function notesOfLot(lotId: string): Selection<NoteOfLot> {
  const these = recordsOfLot(lotId);
  return {
    columns: {
      what: "text",
      id: "text",
      on: "text",
      words: "text",
      who: "text",
      value: "number",
      second: "number",
      more: "text",
      closed: "text",
    },
    rows: sql`
      SELECT 'story' AS "what", x."id", x."toldOn" AS "on", x."words", COALESCE(x."teller", p."name") AS "who", CAST(NULL AS DOUBLE PRECISION) AS "value",
        CAST(NULL AS DOUBLE PRECISION) AS "second", x."about" AS "more", NULL AS "closed"
      FROM "Story" x LEFT JOIN "Person" p ON p."stewardId" = x."stewardId" WHERE x."lotId" IN ${these}
      UNION ALL
      SELECT 'observation', x."id", x."on", x."words", p."name", x."value", NULL, x."unit", NULL
      FROM "Observation" x LEFT JOIN "Person" p ON p."stewardId" = x."stewardId" WHERE x."lotId" IN ${these}
      UNION ALL
      SELECT 'warning', x."id", x."on", x."reason", p."name", NULL, NULL, x."closedHow", x."closedOn"
      FROM "Warning" x LEFT JOIN "Person" p ON p."stewardId" = x."stewardId" WHERE x."lotId" IN ${these}
      UNION ALL
      SELECT 'question', x."id", x."raisedAt", x."sentence", NULL, NULL, NULL, x."answer", x."answeredAt" FROM "Question" x WHERE x."lotId" IN ${these}
      UNION ALL
      SELECT 'weighing', x."id", x."on", x."note", NULL, x."seeds", x."grams", NULL, NULL FROM "SeedWeighing" x WHERE x."lotId" IN ${these}
      UNION ALL
      SELECT 'moisture', x."id", x."on", x."note", NULL, x."percent", x."relativeHumidityPercent", x."method", NULL
      FROM "MoistureReading" x WHERE x."lotId" IN ${these}
      UNION ALL
      SELECT 'making', x."id", x."on", x."reason", p."name", NULL, NULL, x."kind", NULL
      FROM "LotMaking" x LEFT JOIN "Person" p ON p."stewardId" = x."stewardId" WHERE x."lotId" IN ${these}
      ORDER BY "id"`,
  };
}

import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { fromField, samePlant } from "./asked-of-grow-out";
import { clockAheadOf, isWaiting, refusalsOf } from "./stored-record";

/** What became of a stored record, for a person who looks. */
export type StandOfSent = "taken" | "waiting" | "question" | "set aside";

/** A phone with what it brought home. */
export interface PhoneHome {
  readonly id: string;
  readonly name: string;
  readonly lastHeardAt: string;
  readonly records: number;
  readonly taken: number;
  readonly questions: number;
  readonly waiting: number;
  readonly setAside: number;
  /** minutes by which its clock was ahead when it last sent; null: about right */
  readonly clockAhead: number | null;
}

/** A record as it was sent, and what became of it. */
export interface SentRow {
  readonly id: string;
  readonly deviceId: string;
  readonly phone: string;
  readonly sequence: number;
  readonly growOutId: string | null;
  readonly growOut: string | null;
  readonly kind: string;
  readonly body: string;
  readonly recordedAt: string;
  readonly recordedOffset: number;
  readonly arrivedAt: string;
  readonly by: string | null;
  readonly stand: StandOfSent;
  /** what stands against it, or for what it waits */
  readonly reasons: readonly string[];
}

/** Something that a person has to settle: a record, or whether two plants are one. */
export interface AskedOfField {
  readonly id: string;
  readonly sentence: string;
  readonly raisedAt: string;
  /** the record that is asked about; null: none, or it came in a folder, which carries no records of phones */
  readonly fieldRecordId: string | null;
  /** true where it is asked whether two plants are one, and both are here */
  readonly ofPlants: boolean;
}

/** Two records that a person said are one plant. */
export interface ReadAsOne {
  readonly questionId: string;
  readonly lead: string;
  readonly other: string;
  readonly growOut: string;
}

export interface CameHome {
  readonly phones: readonly PhoneHome[];
  readonly asked: readonly AskedOfField[];
  readonly askedInAll: number;
  readonly asOne: readonly ReadAsOne[];
  readonly records: readonly SentRow[];
  readonly recordsInAll: number;
}

/** What is looked for, and how much is shown of it. */
export interface HomeAsked {
  readonly growOutId: string | null;
  readonly deviceId: string | null;
  readonly from: number;
  readonly most: number;
}

interface StoredRow extends Omit<SentRow, "stand" | "reasons"> {
  readonly state: string;
  readonly refusals: string | null;
}

/** So many questions are shown at once. */
const mostAsked = 100;

/** What phones brought home, the newest first, with what waits for a person. One statement. */
export async function readCameHome(db: Database, { growOutId, deviceId, from, most }: HomeAsked): Promise<CameHome> {
  const waits = `%"code":"waits"%`;
  const ofGrowOut = growOutId === null ? sql`1 = 1` : sql`r."growOutId" = ${growOutId}`;
  const ofPhone = deviceId === null ? sql`1 = 1` : sql`r."deviceId" = ${deviceId}`;
  const askedHere = growOutId === null ? sql`1 = 1` : sql`q."growOutId" = ${growOutId}`;
  const phones: Selection<PhoneRow> = {
    columns: {
      ...{ id: "text", name: "text", lastHeardAt: "text", records: "number", taken: "number", questions: "number" },
      ...{ waiting: "number", setAside: "number", lastRefusals: "text" },
    },
    rows: sql`SELECT d."id", d."name", d."lastHeardAt", COUNT(r."id") AS "records",
        COALESCE(SUM(CASE WHEN r."state" = 'taken' THEN 1 ELSE 0 END), 0) AS "taken",
        COALESCE(SUM(CASE WHEN r."state" = 'question' AND (r."refusals" IS NULL OR r."refusals" NOT LIKE ${waits}) THEN 1 ELSE 0 END), 0) AS "questions",
        COALESCE(SUM(CASE WHEN r."state" = 'question' AND r."refusals" LIKE ${waits} THEN 1 ELSE 0 END), 0) AS "waiting",
        COALESCE(SUM(CASE WHEN r."state" = 'set aside' THEN 1 ELSE 0 END), 0) AS "setAside",
        (SELECT l."refusals" FROM "FieldRecord" l WHERE l."deviceId" = d."id" ORDER BY l."arrivedAt" DESC, l."sequence" DESC LIMIT 1) AS "lastRefusals"
      FROM "FieldDevice" d JOIN "FieldRecord" r ON r."deviceId" = d."id" WHERE ${ofGrowOut}
      GROUP BY d."id", d."name", d."lastHeardAt" ORDER BY d."lastHeardAt" DESC, d."id"`,
  };
  const asked: Selection<AskedOfField> = {
    columns: { id: "text", sentence: "text", raisedAt: "text", fieldRecordId: "text", ofPlants: "flag" },
    rows: sql`SELECT q."id", q."sentence", q."raisedAt", q."fieldRecordId",
        (q."plantId" IS NOT NULL AND q."otherPlantId" IS NOT NULL) AS "ofPlants" FROM "Question" q
      WHERE q."answeredAt" IS NULL AND q."kind" IN (${fromField}, ${samePlant}) AND ${askedHere}
      ORDER BY q."id" LIMIT ${mostAsked}`,
  };
  const asOne: Selection<ReadAsOne> = {
    columns: { questionId: "text", lead: "text", other: "text", growOut: "text" },
    rows: sql`SELECT q."id" AS "questionId", l."name" AS "lead", o."name" AS "other", g."name" AS "growOut" FROM "Question" q
      JOIN "Plant" o ON o."id" = q."otherPlantId" AND o."sameAsId" = q."plantId" JOIN "Plant" l ON l."id" = q."plantId"
      JOIN "GrowOut" g ON g."id" = q."growOutId" WHERE q."kind" = ${samePlant} AND ${askedHere} ORDER BY q."id" DESC LIMIT ${mostAsked}`,
  };
  const counted: Selection<{ asked: number; records: number }> = {
    columns: { asked: "number", records: "number" },
    rows: sql`SELECT
      (SELECT COUNT(*) FROM "Question" q WHERE q."answeredAt" IS NULL AND q."kind" IN (${fromField}, ${samePlant}) AND ${askedHere}) AS "asked",
      (SELECT COUNT(*) FROM "FieldRecord" r WHERE ${ofGrowOut} AND ${ofPhone}) AS "records"`,
  };
  const records: Selection<StoredRow> = {
    columns: rowColumns,
    rows: sql`SELECT r."id", r."deviceId", d."name" AS "phone", r."sequence", r."growOutId", g."name" AS "growOut", r."kind", r."body",
        r."recordedAt", r."recordedOffset", r."arrivedAt", p."name" AS "by", r."state", r."refusals"
      FROM "FieldRecord" r JOIN "FieldDevice" d ON d."id" = r."deviceId" LEFT JOIN "GrowOut" g ON g."id" = r."growOutId"
      LEFT JOIN "Person" p ON p."stewardId" = r."stewardId"
      WHERE ${ofGrowOut} AND ${ofPhone} ORDER BY r."arrivedAt" DESC, r."deviceId", r."sequence" DESC LIMIT ${most} OFFSET ${from}`,
  };
  const found = await readTogether(db, { phones, asked, asOne, counted, records });
  return {
    phones: found.phones.map(({ lastRefusals, ...phone }) => ({
      ...phone,
      clockAhead: clockAheadOf({ refusals: lastRefusals }),
    })),
    asked: found.asked,
    asOne: found.asOne,
    askedInAll: found.counted[0]?.asked ?? 0,
    records: found.records.map(sentRow),
    recordsInAll: found.counted[0]?.records ?? 0,
  };
}

type PhoneRow = Omit<PhoneHome, "clockAhead"> & { readonly lastRefusals: string | null };

const rowColumns = {
  id: "text",
  deviceId: "text",
  phone: "text",
  sequence: "number",
  growOutId: "text",
  growOut: "text",
  kind: "text",
  body: "text",
  recordedAt: "text",
  recordedOffset: "number",
  arrivedAt: "text",
  by: "text",
  state: "text",
  refusals: "text",
} as const;

function sentRow({ state, refusals, ...row }: StoredRow): SentRow {
  const stand = state === "question" && isWaiting({ state, refusals }) ? "waiting" : (state as StandOfSent);
  return { ...row, stand, reasons: refusalsOf({ refusals }).map(({ sentence }) => sentence) };
}

import type { Database } from "@/lib/db";
import type { FieldRecord } from "@/lib/schemas/field/field-records";
import { type WaysToSettle, waysToSettle } from "./settle-field-records";
import { clockAheadOf, isWaiting, refusalsOf, sentRecord } from "./stored-record";

/** A record as it was sent, for the person who settles it. */
export interface SentRecordRead {
  readonly id: string;
  readonly sent: FieldRecord;
  readonly phone: string;
  readonly growOut: { readonly id: string; readonly name: string } | null;
  readonly arrivedAt: string;
  readonly by: string | null;
  readonly state: string;
  readonly waiting: boolean;
  readonly reasons: readonly string[];
  readonly clockAhead: number | null;
  readonly answer: string | null;
  readonly ways: WaysToSettle;
  /** others of its phone and grow-out against which the same stands, with it */
  readonly alike: readonly string[];
}

/** Reads a record that came from the field; null where there is none, or none that the one who asks may see. */
export async function readSentRecord(db: Database, id: string): Promise<SentRecordRead | null> {
  const row = await db.read.fieldRecord.findUnique({
    where: { id },
    include: {
      device: true,
      growOut: { select: { id: true, name: true } },
      steward: { include: { person: true } },
      questions: true,
    },
  });
  if (!row) return null;
  const codes = codesOf(row.refusals);
  const open = await db.read.fieldRecord.findMany({
    where: { deviceId: row.deviceId, growOutId: row.growOutId, state: "question" },
    select: { id: true, refusals: true },
    orderBy: { sequence: "asc" },
  });
  return {
    id,
    sent: sentRecord(row),
    phone: row.device.name,
    growOut: row.growOut,
    arrivedAt: row.arrivedAt,
    by: row.steward?.person?.name ?? null,
    state: row.state,
    waiting: isWaiting(row),
    reasons: refusalsOf(row).map(({ sentence }) => sentence),
    clockAhead: clockAheadOf(row),
    answer: row.questions.find(({ answer }) => answer !== null)?.answer ?? null,
    ways: waysToSettle(row),
    alike: open.filter(({ refusals }) => codesOf(refusals) === codes).map((each) => each.id),
  };
}

function codesOf(refusals: string | null): string {
  return refusalsOf({ refusals })
    .map(({ code }) => code)
    .join(" ");
}

import type { Database } from "@/lib/db";
import { nounOf } from "../change-set/name-of-record";
import type { TableName } from "../change-set/records";
import { followsFromOthers } from "./fields-changed";
import { clockOf } from "./list-change-sets";
import { namesOfIds } from "./names-of-ids";

/** A record as it stood in this registry at the end of a day. */
export interface RecordAsOf {
  readonly recordId: string;
  readonly noun: string;
  /** "not yet": written down later; "removed": taken out before */
  readonly state: "stood" | "not yet" | "removed";
  readonly fields: readonly { field: string; value: unknown }[];
  readonly names: ReadonlyMap<string, string>;
}

/** A record as it was written at the end of a civil day (of whoever wrote); null where the history does not know it. */
export async function recordAsOf(db: Database, recordId: string, day: string): Promise<RecordAsOf | null> {
  const rows = await db.read.change.findMany({
    where: { recordId },
    include: { changeSet: { select: { number: true, at: true, atOffset: true } } },
  });
  const [first] = rows;
  if (!first) return null;
  const noun = nounOf(first.tableName as TableName);
  const until = rows
    .filter(({ changeSet }) => clockOf(changeSet.at, changeSet.atOffset).day <= day)
    .sort((a, b) => a.changeSet.number - b.changeSet.number || a.position - b.position);
  const last = until.at(-1);
  if (!last || last.after === null) {
    return { recordId, noun, state: last ? "removed" : "not yet", fields: [], names: new Map() };
  }
  const row = JSON.parse(last.after) as Record<string, unknown>;
  const fields = Object.entries(row)
    .filter(([field, value]) => value !== null && !followsFromOthers(field, row))
    .map(([field, value]) => ({ field, value }));
  return { recordId, noun, state: "stood", fields, names: await namesOfIds(db, fields) };
}

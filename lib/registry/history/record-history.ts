import { type Database, placeholders } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import { clockOf } from "./list-change-sets";
import { namesOfIds } from "./names-of-ids";
import { pointers, type RecordChange, recordChange } from "./read-change-set";

/** One change set as far as it touched the records that are looked at. */
export interface RecordHistoryEntry {
  readonly changeSetId: string;
  readonly number: number;
  readonly at: string;
  readonly day: string;
  readonly time: string;
  readonly kind: string;
  readonly title: string;
  readonly reason: string | null;
  readonly actor: string;
  readonly changes: readonly RecordChange[];
}

export interface RecordHistory {
  /** newest first */
  readonly entries: readonly RecordHistoryEntry[];
  readonly names: ReadonlyMap<string, string>;
}

interface Row {
  readonly id: string;
  readonly changeSetId: string;
  readonly tableName: string;
  readonly recordId: string;
  readonly action: string;
  readonly before: string | null;
  readonly after: string | null;
  readonly position: number;
  readonly number: number;
  readonly at: string;
  readonly atOffset: number;
  readonly kind: string;
  readonly title: string;
  readonly reason: string | null;
  readonly actor: string;
}

const askedAtOnce = 500;

/**
 * Who did what to these records and when, each field from what to what. Ids of the record and of what belongs to it. Two statements for
 * each five hundred ids.
 */
export async function recordHistory(db: Database, ids: readonly string[]): Promise<RecordHistory> {
  const rows: Row[] = [];
  for (let start = 0; start < ids.length; start += askedAtOnce) {
    const some = ids.slice(start, start + askedAtOnce);
    const these = placeholders(db.engine, some.length);
    const found = await db.read.$queryRawUnsafe<Row[]>(
      `SELECT c."id", c."changeSetId", c."tableName", c."recordId", c."action", c."before", c."after", c."position",
              s."number", s."at", s."atOffset", s."kind", s."title", s."reason", s."actor"
       FROM "Change" c JOIN "ChangeSet" s ON s."id" = c."changeSetId" WHERE c."recordId" IN (${these})`,
      ...some,
    );
    rows.push(...found);
  }
  rows.sort((a, b) => b.number - a.number || a.position - b.position);
  const entries = [...grouped(rows, (row) => row.changeSetId).values()].flatMap((own): RecordHistoryEntry[] => {
    const [set] = own;
    if (!set) return [];
    const { changeSetId, number, at, atOffset, kind, title, reason, actor } = set;
    const changes = own.map(recordChange);
    return [{ changeSetId, number, at, ...clockOf(at, atOffset), kind, title, reason, actor, changes }];
  });
  const fields = entries.flatMap((entry) => entry.changes.flatMap(pointers));
  return { entries, names: await namesOfIds(db, fields) };
}

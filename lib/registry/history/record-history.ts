import type { Database } from "@/lib/db";
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

/** Who did what to these records and when, each field from what to what. Ids of the record and of what belongs to it. */
export async function recordHistory(db: Database, ids: readonly string[]): Promise<RecordHistory> {
  const rows = [];
  for (let start = 0; start < ids.length; start += 500) {
    rows.push(
      ...(await db.read.change.findMany({
        where: { recordId: { in: ids.slice(start, start + 500) } },
        orderBy: [{ changeSetId: "asc" }, { position: "asc" }],
      })),
    );
  }
  const bySet = grouped(rows, (row) => row.changeSetId);
  const sets = await db.read.changeSet.findMany({
    where: { id: { in: [...bySet.keys()] } },
    orderBy: { number: "desc" },
  });
  const entries = sets.map((set) => ({
    changeSetId: set.id,
    number: set.number,
    at: set.at,
    ...clockOf(set.at, set.atOffset),
    kind: set.kind,
    title: set.title,
    reason: set.reason,
    actor: set.actor,
    changes: (bySet.get(set.id) ?? []).map(recordChange),
  }));
  const fields = entries.flatMap((entry) => entry.changes.flatMap(pointers));
  return { entries, names: await namesOfIds(db, fields) };
}

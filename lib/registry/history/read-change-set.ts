import type { Database } from "@/lib/db";
import { nounOf } from "../change-set/name-of-record";
import type { TableName } from "../change-set/records";
import { type FieldChange, fieldsChanged } from "./fields-changed";
import { type ChangeCount, clockOf, countsOf } from "./list-change-sets";
import { namesOfIds } from "./names-of-ids";

/** One record of a change set: what was done to it, each field from what to what. */
export interface RecordChange {
  readonly id: string;
  readonly table: TableName;
  readonly noun: string;
  readonly recordId: string;
  /** the name that a person knows it by, where it has one of its own */
  readonly name: string | null;
  readonly action: "create" | "update" | "remove";
  readonly fields: readonly FieldChange[];
}

export interface ChangeSetRead {
  readonly id: string;
  readonly number: number;
  readonly at: string;
  readonly day: string;
  readonly time: string;
  readonly kind: string;
  readonly title: string;
  readonly reason: string | null;
  readonly actor: string;
  readonly undoneBy: { id: string; number: number } | null;
  readonly undoes: { id: string; number: number; title: string } | null;
  readonly counts: readonly ChangeCount[];
  readonly total: number;
  readonly changes: readonly RecordChange[];
  /** names of the records that fields point to */
  readonly names: ReadonlyMap<string, string>;
}

export const changesOnAPage = 100;

/** One change set by its id or number, with a page of its records; null where there is none. */
export async function readChangeSet(db: Database, idOrNumber: string, page = 0): Promise<ChangeSetRead | null> {
  const number = /^\d{1,9}$/.test(idOrNumber) ? Number(idOrNumber) : null;
  const set = await db.read.changeSet.findUnique({
    where: number === null ? { id: idOrNumber } : { number },
    include: {
      undoes: { select: { id: true, number: true, title: true } },
      undoneBy: { select: { id: true, number: true } },
    },
  });
  if (!set) return null;
  const rows = await db.read.change.findMany({
    where: { changeSetId: set.id },
    orderBy: { position: "asc" },
    skip: page * changesOnAPage,
    take: changesOnAPage,
  });
  const changes = rows.map(recordChange);
  const counts = (await countsOf(db, [set.id])).get(set.id) ?? [];
  return {
    id: set.id,
    number: set.number,
    at: set.at,
    ...clockOf(set.at, set.atOffset),
    kind: set.kind,
    title: set.title,
    reason: set.reason,
    actor: set.actor,
    undoneBy: set.undoneBy,
    undoes: set.undoes,
    counts,
    total: await db.read.change.count({ where: { changeSetId: set.id } }),
    changes,
    names: await namesOfIds(db, changes.flatMap(pointers)),
  };
}

/** A stored change as it is read. */
export function recordChange(row: {
  readonly id: string;
  readonly tableName: string;
  readonly recordId: string;
  readonly action: string;
  readonly before: string | null;
  readonly after: string | null;
}): RecordChange {
  const before = parsed(row.before);
  const after = parsed(row.after);
  const table = row.tableName as TableName;
  return {
    id: row.id,
    table,
    noun: nounOf(table),
    recordId: row.recordId,
    name: ownName(after ?? before ?? {}),
    action: row.action as RecordChange["action"],
    fields: fieldsChanged(before, after),
  };
}

/** The fields of a change that may point to other records. */
export function pointers(change: RecordChange): { field: string; value: unknown }[] {
  return change.fields.flatMap(({ field, from, to }) => [
    { field, value: from },
    { field, value: to },
  ]);
}

function parsed(text: string | null): Record<string, unknown> | null {
  return text === null ? null : (JSON.parse(text) as Record<string, unknown>);
}

function ownName(row: Readonly<Record<string, unknown>>): string | null {
  for (const key of ["number", "name", "commonName", "trait", "tag", "field", "key"]) {
    const value = row[key];
    if (typeof value === "string" && value !== "") return value;
  }
  return null;
}

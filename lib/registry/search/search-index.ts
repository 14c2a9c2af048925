import type { Database } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import type { IndexedRecord } from "./indexed-record";
import { readings } from "./read-indexed";

/** Everything that can be searched, by table and id, as of the registry's last change set. */
interface SearchIndex {
  revision: number;
  readonly records: Map<string, IndexedRecord>;
}

const indexes = new WeakMap<Database, Promise<SearchIndex>>();

/** So many changed rows are read again one by one; with more the whole index is built anew. */
const readAgainAtMost = 400;

/** Tables whose names stand in other records' lines: a change of one of these rows is a reason to build anew. */
const namedElsewhere: ReadonlySet<string> = new Set(["Variety", "Lot", "GrowOut", "Crop", "Steward"]);

/**
 * The records that can be searched. Held in memory and brought up to the last change set: with one statement where nothing changed, and
 * one a table where few rows did. Both engines answer alike, since the comparing is done here.
 */
export async function searchIndex(db: Database): Promise<readonly IndexedRecord[]> {
  const held = indexes.get(db);
  const made = (held ? held.then((index) => upToDate(db, index)) : built(db)).catch((error: unknown) => {
    indexes.delete(db);
    throw error;
  });
  indexes.set(db, made);
  return [...(await made).records.values()];
}

async function built(db: Database): Promise<SearchIndex> {
  const revision = await db.lastChange();
  const records = new Map<string, IndexedRecord>();
  for (const reading of Object.values(readings)) {
    for (const record of await reading(db, null)) records.set(record.id, record);
  }
  return { revision, records };
}

async function upToDate(db: Database, index: SearchIndex): Promise<SearchIndex> {
  const revision = await db.lastChange();
  if (revision === index.revision) return index;
  // What somebody may see can change with records that they do not see.
  if (db.whole || revision < index.revision) return built(db);
  const changes = await db.read.change.findMany({
    where: { changeSet: { number: { gt: index.revision } } },
    select: { tableName: true, recordId: true, action: true },
    take: readAgainAtMost + 1,
  });
  const renamed = changes.some((change) => namedElsewhere.has(change.tableName) && change.action !== "create");
  if (changes.length > readAgainAtMost || renamed) return built(db);
  for (const [table, own] of grouped(changes, (change) => change.tableName)) {
    const reading = readings[table];
    if (!reading) continue;
    const ids = [...new Set(own.map((change) => change.recordId))];
    for (const id of ids) index.records.delete(id);
    for (const record of await reading(db, ids)) index.records.set(record.id, record);
  }
  index.revision = revision;
  return index;
}

import type { Client, Database } from "@/lib/db";

interface Shelf<T> {
  readonly revision: number;
  readonly value: Promise<T>;
}

/**
 * A reading that is kept in memory under the number of the last change set: one statement where nothing has changed since, the reading once
 * more where something has. What it gives is shared by all who ask: never change it.
 */
export function keptUntilChange<T>(read: (db: Database) => Promise<T>): (db: Database) => Promise<T> {
  const shelves = new WeakMap<Client, Shelf<T>>();
  return async (db) => {
    const revision = await db.lastChange();
    const kept = shelves.get(db.read);
    if (kept?.revision === revision) return kept.value;
    const value = read(db);
    shelves.set(db.read, { revision, value });
    value.catch(() => shelves.delete(db.read));
    return value;
  };
}

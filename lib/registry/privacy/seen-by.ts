import type { Actor } from "@/lib/access/actor";
import { type Database, narrowed } from "@/lib/db";
import { narrowingsOf } from "./narrowing";
import { viewerOf } from "./viewer";

const views = new WeakMap<Database, Map<string, Database>>();
const mostKept = 40;

/**
 * The registry as an actor sees it: the whole one for the owner; for everybody else the same over what they may see, so that no list, count,
 * search, file or error tells more. Actors who see the same share one, with what is kept in memory of it.
 */
export function seenBy(db: Database, actor: Actor): Database {
  const viewer = viewerOf(actor);
  if (viewer === null) return db;
  const key = JSON.stringify(viewer);
  const kept = views.get(db) ?? new Map<string, Database>();
  views.set(db, kept);
  const known = kept.get(key);
  if (known) return known;
  const { read, write } = narrowingsOf(viewer);
  const made = narrowed(db, read, write);
  const oldest = kept.keys().next().value;
  if (kept.size >= mostKept && oldest !== undefined) kept.delete(oldest);
  kept.set(key, made);
  return made;
}

import type { Actor } from "@/lib/access/actor";

/** Of an actor, what decides which records are seen. */
export interface Viewer {
  /** a librarian at a desk sees who got seed over it; somebody who has not signed in sees what is public */
  readonly as: "member" | "librarian" | "public";
  readonly stewardId: string | null;
  /** of a helper */
  readonly growOutIds: readonly string[];
}

/** The viewer that an actor is; null: the owner, who sees all. */
export function viewerOf(actor: Actor): Viewer | null {
  if (actor.role === "owner") return null;
  if (actor.role === "public") return { as: "public", stewardId: null, growOutIds: [] };
  const as = actor.role === "librarian" ? "librarian" : "member";
  // A reader keeps nothing, whatever steward the account names.
  const stewardId = actor.role === "reader" ? null : actor.stewardId;
  return { as, stewardId, growOutIds: actor.role === "helper" ? [...actor.growOutIds].sort() : [] };
}

import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { Actor, Role } from "./actor";

/** What can be done with a registry. Every operation asks for one of these. */
export type Action =
  | "read"
  | "read-private"
  | "record"
  | "correct"
  | "undo"
  | "import"
  | "export"
  | "settings"
  | "demonstration"
  /** who may come in, and as what */
  | "members"
  /** come in by an invitation, or set a passphrase anew by one */
  | "come-in";

/** The one table of who may do what. */
const permissions: Readonly<Record<Action, readonly Role[]>> = {
  read: ["owner", "steward", "helper", "librarian", "reader"],
  "read-private": ["owner"],
  record: ["owner", "steward"],
  correct: ["owner", "steward"],
  undo: ["owner"],
  import: ["owner"],
  export: ["owner"],
  settings: ["owner"],
  demonstration: ["owner"],
  members: ["owner"],
  "come-in": ["owner", "steward", "helper", "librarian", "reader", "public"],
};

/** Accepts the actor for an action, or refuses with who may do it. */
export function may(actor: Actor, action: Action): Outcome<Actor> {
  const roles = permissions[action];
  if (roles.includes(actor.role)) return accepted(actor);
  return refused(refusal("not-allowed", [], actor.role, `may not do this (${action})`, `ask ${roles.join(" or ")}`));
}

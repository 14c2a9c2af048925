import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { Actor, Role } from "./actor";

/**
 * What can be done with a registry, as fine as the work is shared out. Every page, every answer to a request, every form and every operation
 * asks for one of these. The table below says which roles may try; whose lots, grow-outs and varieties they may touch says
 * `lib/registry/ownership`, and what of the records they get to see says `lib/registry/privacy`.
 */
export type Action =
  /** look at varieties, lots, grow-outs and what is worked out of them */
  | "read"
  /** read who changed what: everything for the owner, one's own entries for the others */
  | "history"
  /** enter varieties, lots, grow-outs, what is in the jar: the steward's own book */
  | "record"
  /** put such an entry right, with a reason */
  | "correct"
  /** counts, rogue passes, flowering, plants, marks, scores, neighbours: written with muddy hands */
  | "record-in-field"
  | "correct-in-field"
  /** a library's desk: seed given, lent, taken in and returned, promises, holders' words, packing, drying and tests of its lots */
  | "desk"
  | "correct-at-desk"
  /** put a picture to a record of one's own, say what it shows, take it away */
  | "picture"
  /** whether a lot is kept, put aside, closed or given up; what grade of isolation is claimed */
  | "decide"
  /** take an entry of one's own back as if it had not been made */
  | "undo"
  /** a whole folder in: it can change every record at once */
  | "import"
  /** the whole registry out, with everybody's contact: what one takes away cannot be asked back */
  | "export"
  /** values that count for everybody: the registry's settings, own values of crops and published tables */
  | "settings"
  /** erase a person's name and contact, or a picture, for good */
  | "erase"
  /** make a copy, or look whether the copies are sound */
  | "backup"
  | "demonstration"
  /** who may come in, and as what */
  | "members"
  /** come in by an invitation, or set a passphrase anew by one */
  | "come-in";

const everybody = ["owner", "steward", "librarian", "helper", "reader", "public"] as const;
const members = ["owner", "steward", "librarian", "helper", "reader"] as const;
const owner = ["owner"] as const;

/** The one table of who may do what. */
export const permissions: Readonly<Record<Action, readonly Role[]>> = {
  read: members,
  history: ["owner", "steward", "librarian"],
  record: ["owner", "steward"],
  correct: ["owner", "steward"],
  "record-in-field": ["owner", "steward", "helper"],
  "correct-in-field": ["owner", "steward", "helper"],
  desk: ["owner", "steward", "librarian"],
  "correct-at-desk": ["owner", "steward", "librarian"],
  picture: ["owner", "steward", "librarian", "helper"],
  decide: ["owner", "steward", "librarian"],
  undo: ["owner", "steward", "librarian"],
  import: owner,
  export: owner,
  settings: owner,
  erase: owner,
  backup: owner,
  demonstration: owner,
  members: owner,
  "come-in": everybody,
};

/** Whether a role may try an action: for menus and buttons, which offer nothing that would be refused. */
export function roleMay(role: Role, action: Action): boolean {
  return permissions[action].includes(role);
}

/** Accepts the actor for an action, or refuses with who may do it. */
export function may(actor: Actor, action: Action): Outcome<Actor> {
  if (roleMay(actor.role, action)) return accepted(actor);
  return refused(refusal("not-allowed", [], roleWords[actor.role], "may not do this", whoMay(action)));
}

/** Who may, in words: "the owner or a steward may". */
export function whoMay(action: Action): string {
  const words = permissions[action].map((role) => roleWords[role]);
  const [last, ...others] = [words.at(-1), ...words.slice(0, -1)];
  return others.length === 0 ? `${last} may` : `${others.join(", ")} or ${last} may`;
}

/** The roles in words. */
export const roleWords: Readonly<Record<Role, string>> = {
  owner: "the owner",
  steward: "a steward",
  librarian: "a librarian",
  helper: "a helper",
  reader: "a reader",
  public: "somebody who has not signed in",
};

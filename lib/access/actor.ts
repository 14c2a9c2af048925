/** Who acts. Alone on one machine it is the owner; a steward's record is not an account, but an actor may act for one. */
export interface Actor {
  readonly name: string;
  readonly role: Role;
  /** the steward for whom the actor keeps seed; null: for none */
  readonly stewardId: string | null;
  /** the account's place in this registry; null: nobody has signed in */
  readonly memberId: string | null;
  /** the grow-outs that a helper may record for; of no other role is it asked */
  readonly growOutIds: readonly string[];
  /** offset of the actor's clock from UTC in minutes, for the record of when it was written down */
  readonly offsetMinutes: number;
}

/** Every role, from the widest to the narrowest. */
export const roles = ["owner", "steward", "librarian", "helper", "reader", "public"] as const;

export type Role = (typeof roles)[number];

/** The person at the machine: nothing to sign into while it listens on this machine only. */
export function ownerHere(offsetMinutes = 0): Actor {
  return { name: "the owner", role: "owner", stewardId: null, memberId: null, growOutIds: [], offsetMinutes };
}

/** Somebody who has not signed in where others may come. */
export function anybody(offsetMinutes = 0): Actor {
  return { name: "somebody", role: "public", stewardId: null, memberId: null, growOutIds: [], offsetMinutes };
}

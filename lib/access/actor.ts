/** Who acts. Alone on one machine it is the owner; a steward's record is not an account, but an actor may act for one. */
export interface Actor {
  readonly name: string;
  readonly role: Role;
  readonly stewardId: string | null;
  /** offset of the actor's clock from UTC in minutes, for the record of when it was written down */
  readonly offsetMinutes: number;
}

export type Role = "owner" | "steward" | "helper" | "librarian" | "reader" | "public";

/** The person at the machine: nothing to sign into while it listens on this machine only. */
export function ownerHere(offsetMinutes = 0): Actor {
  return { name: "the owner", role: "owner", stewardId: null, offsetMinutes };
}

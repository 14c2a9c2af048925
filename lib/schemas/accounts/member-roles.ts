/** What a person who signs in may be, from the widest to the narrowest. The public signs in nowhere. */
export const memberRoles = ["owner", "steward", "librarian", "helper", "reader"] as const;

export type MemberRole = (typeof memberRoles)[number];

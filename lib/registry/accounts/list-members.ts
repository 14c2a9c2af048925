import type { Actor } from "@/lib/access/actor";
import { may } from "@/lib/access/permissions";
import type { Database } from "@/lib/db";
import type { MemberRole } from "@/lib/schemas/accounts/member-roles";
import { accepted, type Outcome } from "@/lib/science/outcome";

/** Somebody who may come in, or might once. */
export interface MemberInList {
  readonly id: string;
  readonly userId: string | null;
  /** null once the account is gone */
  readonly name: string | null;
  readonly signInName: string | null;
  readonly role: MemberRole;
  readonly stewardId: string | null;
  readonly steward: string | null;
  readonly growOuts: readonly { readonly id: string; readonly name: string }[];
  readonly addedAt: string;
  readonly endedAt: string | null;
  readonly note: string | null;
  readonly devices: number;
}

/** An invitation that waits for its person. */
export interface InvitationInList {
  readonly id: string;
  readonly role: MemberRole;
  readonly steward: string | null;
  readonly words: string | null;
  readonly createdAt: string;
  readonly expiresAt: string;
  /** it gives this member a new passphrase */
  readonly forSignInName: string | null;
}

/** Everybody who may come in, those who may not any more last, and the invitations that wait. For those alone who may change it. */
export async function listMembers(
  db: Database,
  actor: Actor,
  now: Date = new Date(),
): Promise<Outcome<{ members: readonly MemberInList[]; invitations: readonly InvitationInList[] }>> {
  const allowed = may(actor, "members");
  if (!allowed.ok) return allowed;
  const rows = await db.read.member.findMany({
    include: {
      user: {
        select: {
          id: true,
          name: true,
          username: true,
          sessions: { where: { expiresAt: { gt: now } }, select: { id: true } },
        },
      },
      steward: { select: { person: { select: { name: true } } } },
      growOuts: { select: { growOut: { select: { id: true, name: true } } } },
    },
    orderBy: [{ addedAt: "asc" }, { id: "asc" }],
  });
  const members = rows.map((row): MemberInList => {
    const { id, stewardId, addedAt, endedAt, note } = row;
    return {
      id,
      userId: row.user?.id ?? null,
      name: row.user?.name ?? null,
      signInName: row.user?.username ?? null,
      role: row.role as MemberRole,
      stewardId,
      steward: row.steward?.person?.name ?? null,
      growOuts: row.growOuts.map((each) => each.growOut).sort((left, right) => (left.name < right.name ? -1 : 1)),
      addedAt,
      endedAt,
      note,
      devices: row.user?.sessions.length ?? 0,
    };
  });
  const open = await db.read.invitation.findMany({
    where: { usedAt: null, withdrawnAt: null, expiresAt: { gt: now.toISOString() } },
    include: { steward: { select: { person: { select: { name: true } } } } },
    orderBy: [{ createdAt: "asc" }, { id: "asc" }],
  });
  const nameOf = new Map(members.map((member) => [member.userId, member.signInName]));
  const invitations = open.map((row) => ({
    id: row.id,
    role: row.role as MemberRole,
    steward: row.steward?.person?.name ?? null,
    words: row.words,
    createdAt: row.createdAt,
    expiresAt: row.expiresAt,
    forSignInName: row.forUserId === null ? null : (nameOf.get(row.forUserId) ?? null),
  }));
  const here = (member: MemberInList) => member.endedAt === null;
  return accepted({ members: [...members.filter(here), ...members.filter((each) => !here(each))], invitations });
}

import type { Database, Transaction } from "@/lib/db";
import type { MemberRole } from "@/lib/schemas/accounts/member-roles";
import { accepted, type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { codeHashOf } from "./invitation-code";
import type { Site } from "./site";
import { tryOnce } from "./tries";

/** An invitation that still waits for its person. */
export interface OpenInvitation {
  readonly id: string;
  readonly role: MemberRole;
  readonly stewardId: string | null;
  readonly growOuts: readonly string[];
  /** set: it gives this account a new passphrase */
  readonly forUserId: string | null;
  readonly expiresAt: string;
}

/** The invitation that a code opens; refused once it was used, withdrawn or has run out. */
export async function openInvitation(tx: Transaction, code: string, now: Date): Promise<Outcome<OpenInvitation>> {
  const row = await tx.invitation.findUnique({ where: { codeHash: codeHashOf(code) } });
  if (!row) return refused(unknown);
  if (row.usedAt !== null) return refused(gone("used", "was used already", "sign in, or ask the owner for a new one"));
  if (row.withdrawnAt !== null) return refused(gone("withdrawn", "was withdrawn", "ask the owner for a new one"));
  if (row.expiresAt <= now.toISOString()) return refused(gone("run-out", "has run out", "ask the owner for a new one"));
  return accepted({
    id: row.id,
    role: row.role as MemberRole,
    stewardId: row.stewardId,
    growOuts: row.growOuts === null ? [] : (JSON.parse(row.growOuts) as string[]),
    forUserId: row.forUserId,
    expiresAt: row.expiresAt,
  });
}

/** What an invitation's page tells the person who holds it. */
export interface InvitationShown {
  readonly role: MemberRole;
  readonly steward: string | null;
  readonly growOuts: readonly string[];
  /** the name to sign in with, where it only gives a new passphrase */
  readonly signInName: string | null;
  readonly expiresAt: string;
}

/** Shows an invitation to whoever holds its code. A look that finds none is a try: codes cannot be gone through. */
export async function showInvitation(
  db: Database,
  site: Site,
  code: string,
  now: Date = new Date(),
): Promise<Outcome<InvitationShown>> {
  const found = await openInvitation(db.read, code, now);
  if (!found.ok) {
    const tried = await tryOnce(db, site, null, now);
    return tried.ok ? found : tried;
  }
  const { role, stewardId, growOuts, forUserId, expiresAt } = found.value;
  const person = stewardId && (await db.read.person.findUnique({ where: { stewardId } }));
  const named = await db.read.growOut.findMany({ where: { id: { in: [...growOuts] } }, orderBy: { name: "asc" } });
  const user = forUserId && (await db.read.user.findUnique({ where: { id: forUserId } }));
  return accepted({
    role,
    steward: person ? person.name : null,
    growOuts: named.map((each) => each.name),
    signInName: user ? user.username : null,
    expiresAt,
  });
}

const unknown: Refusal = {
  code: "unknown",
  path: [],
  given: null,
  needed: "look at each sign, or ask the owner for a new one",
  sentence: "No invitation has this code; look at each sign, or ask the owner for a new one",
};

function gone(code: string, wrong: string, needed: string): Refusal {
  return { code, path: [], given: null, needed, sentence: `This invitation ${wrong}; ${needed}` };
}

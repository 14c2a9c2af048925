import type { Actor, Role } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { authOf } from "./auth";
import type { Site } from "./site";

/** Somebody who is signed in: who acts, by which session, until when. */
export interface SessionMember {
  readonly actor: Actor;
  readonly userId: string;
  readonly sessionId: string;
  readonly signInName: string;
  readonly until: Date;
}

/** Who is signed in by the request's cookies; null where nobody is, or where they may not come in any more. */
export async function sessionMember(
  db: Database,
  site: Site,
  headers: Headers,
  offsetMinutes = 0,
): Promise<SessionMember | null> {
  if (!headers.get("cookie")?.includes("kinrow.session_token=")) return null;
  const found = await authOf(db, site).api.getSession({ headers, query: { disableRefresh: true } });
  if (!found) return null;
  const member = await db.read.member.findUnique({
    where: { userId: found.user.id },
    include: { growOuts: { select: { growOutId: true } } },
  });
  if (!member || member.endedAt !== null) return null;
  return {
    actor: actorOfMember(member, found.user.name, offsetMinutes),
    userId: found.user.id,
    sessionId: found.session.id,
    signInName: found.user.username ?? "",
    until: found.session.expiresAt,
  };
}

/** A member as one who acts. */
export function actorOfMember(
  member: {
    readonly id: string;
    readonly role: string;
    readonly stewardId: string | null;
    readonly growOuts: readonly { readonly growOutId: string }[];
  },
  name: string,
  offsetMinutes = 0,
): Actor {
  return {
    name,
    role: member.role as Role,
    stewardId: member.stewardId,
    memberId: member.id,
    growOutIds: member.growOuts.map((each) => each.growOutId),
    offsetMinutes,
  };
}

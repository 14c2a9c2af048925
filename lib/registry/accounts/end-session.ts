import type { Actor } from "@/lib/access/actor";
import { may } from "@/lib/access/permissions";
import type { Database } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** Signs one device out: an own one, or any by the owner. It is out at its next request. */
export async function endSession(db: Database, actor: Actor, sessionId: string): Promise<Outcome<void>> {
  const session = await db.read.session.findUnique({
    where: { id: sessionId },
    select: { user: { select: { member: { select: { id: true } } } } },
  });
  const own = session?.user.member?.id !== undefined && session.user.member.id === actor.memberId;
  if (!own) {
    const allowed = may(actor, "members");
    if (!allowed.ok) return allowed;
  }
  if (!session) return refused(refusal("unknown", [], "this device", "is signed out already", "nothing is left to do"));
  await db.write.session.deleteMany({ where: { id: sessionId } });
  return accepted(undefined);
}

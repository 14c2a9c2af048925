import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { memberHere } from "./member-here";
import { anotherOwner } from "./membership";

/** Ends somebody's way in: every session at once, and ways to a new passphrase that are still open. What they wrote stays, with their name. */
export async function endMember(
  db: Database,
  actor: Actor,
  memberId: string,
  now: Date = new Date(),
): Promise<Outcome<Performed<void>>> {
  return perform(db, actor, { action: "members", title: "A way in was ended" }, async (change, tx) => {
    const member = await memberHere(tx, memberId);
    if (!member.ok) return refused(...member.refusals);
    const { role, userId, signInName } = member.value;
    if (role === "owner") {
      const other = await anotherOwner(tx, memberId);
      if (!other.ok) return other;
    }
    change.touchNothing();
    change.title = `${signInName} may not come in any more`;
    await change.update("Member", memberId, { endedAt: now.toISOString() });
    const open = await tx.invitation.findMany({ where: { forUserId: userId, usedAt: null, withdrawnAt: null } });
    for (const each of open) await change.update("Invitation", each.id, { withdrawnAt: now.toISOString() });
    await tx.session.deleteMany({ where: { userId } });
    return accepted(undefined);
  });
}

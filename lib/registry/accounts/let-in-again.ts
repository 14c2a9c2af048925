import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";

/** Lets somebody in again whose way was ended, as what they were, with the passphrase that they have. */
export async function letInAgain(db: Database, actor: Actor, memberId: string): Promise<Outcome<Performed<void>>> {
  return perform(db, actor, { action: "members", title: "Let in again" }, async (change, tx) => {
    const member = await tx.member.findUnique({ where: { id: memberId }, include: { user: true } });
    if (!member?.user)
      return refused(refusal("unknown-member", [], memberId, "has no account any more", "invite them anew"));
    change.touchNothing();
    change.title = `${member.user.username ?? member.user.name} may come in again`;
    await change.update("Member", memberId, { endedAt: null });
    return accepted(undefined);
  });
}

import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";

/** Takes an invitation back before anybody used it. */
export async function withdrawInvitation(
  db: Database,
  actor: Actor,
  invitationId: string,
  now: Date = new Date(),
): Promise<Outcome<Performed<void>>> {
  return perform(db, actor, { action: "members", title: "Invitation withdrawn" }, async (change, tx) => {
    const invitation = await tx.invitation.findUnique({ where: { id: invitationId } });
    if (!invitation)
      return refused(refusal("unknown", [], invitationId, "is no invitation here", "choose one of the list"));
    if (invitation.usedAt !== null)
      return refused(refusal("used", [], "this invitation", "was used already", "end the member instead"));
    change.touchNothing();
    if (invitation.withdrawnAt === null)
      await change.update("Invitation", invitationId, { withdrawnAt: now.toISOString() });
    return accepted(undefined);
  });
}

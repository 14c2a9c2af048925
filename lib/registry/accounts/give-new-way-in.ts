import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { codeHashOf, newCode } from "./invitation-code";
import type { WayIn } from "./invite";
import { memberHere } from "./member-here";

/** How long a way to a new passphrase waits. */
export const newWayInDays = 1;

/** For somebody who has forgotten their passphrase: a code, good once and for a day, that sets a new one. Earlier ones stop working. */
export async function giveNewWayIn(
  db: Database,
  actor: Actor,
  memberId: string,
  now: Date = new Date(),
): Promise<Outcome<Performed<WayIn>>> {
  return perform(db, actor, { action: "members", title: "A way to a new passphrase given" }, async (change, tx) => {
    const member = await memberHere(tx, memberId);
    if (!member.ok) return refused(...member.refusals);
    const { userId, role } = member.value;
    const code = newCode();
    const invitationId = uuidv7();
    const expiresAt = new Date(now.getTime() + newWayInDays * 86_400_000).toISOString();
    const before = await tx.invitation.findMany({ where: { forUserId: userId, usedAt: null, withdrawnAt: null } });
    change.touchNothing();
    for (const each of before) await change.update("Invitation", each.id, { withdrawnAt: now.toISOString() });
    await change.create("Invitation", {
      id: invitationId,
      codeHash: codeHashOf(code),
      role,
      forUserId: userId,
      createdAt: now.toISOString(),
      expiresAt,
    });
    return accepted({ invitationId, code, expiresAt });
  });
}

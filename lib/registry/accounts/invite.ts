import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { InvitationSchema } from "@/lib/schemas/accounts/account-forms";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { codeHashOf, newCode } from "./invitation-code";
import { checkedMembership } from "./membership";

/** How long an invitation waits. */
export const invitationDays = 7;

/** A way in that was made: its code is told once, here, and never again. */
export interface WayIn {
  readonly invitationId: string;
  readonly code: string;
  readonly expiresAt: string;
}

/** Invites one person, once: a code that makes an account with this role. Only its hash is kept. */
export async function invite(
  db: Database,
  actor: Actor,
  input: FormTexts,
  now: Date = new Date(),
): Promise<Outcome<Performed<WayIn>>> {
  const read = parseForm(InvitationSchema, input);
  if (!read.ok) return read;
  const { words, ...wanted } = read.value;
  return perform(db, actor, { action: "members", title: `Invited as ${wanted.role}` }, async (change, tx) => {
    const membership = await checkedMembership(tx, wanted);
    if (!membership.ok) return membership;
    const { role, stewardId, growOuts } = membership.value;
    const code = newCode();
    const invitationId = uuidv7();
    const expiresAt = new Date(now.getTime() + invitationDays * 86_400_000).toISOString();
    change.touchNothing();
    await change.create("Invitation", {
      id: invitationId,
      codeHash: codeHashOf(code),
      role,
      stewardId,
      growOuts: growOuts.length > 0 ? JSON.stringify(growOuts) : null,
      words,
      createdAt: now.toISOString(),
      expiresAt,
    });
    return accepted({ invitationId, code, expiresAt });
  });
}

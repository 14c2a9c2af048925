import type { Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** A member who may come in, with the account. */
export interface MemberHere {
  readonly id: string;
  readonly userId: string;
  readonly role: string;
  readonly signInName: string;
}

/** A member who may come in; refused where nobody is, or where the way in was ended. */
export async function memberHere(tx: Transaction, memberId: string): Promise<Outcome<MemberHere>> {
  const member = await tx.member.findUnique({ where: { id: memberId }, include: { user: true } });
  if (!member?.user)
    return refused(refusal("unknown-member", [], memberId, "is nobody who may come in", "choose one of the list"));
  const signInName = member.user.username ?? member.user.name;
  if (member.endedAt !== null)
    return refused(refusal("member-ended", [], signInName, "may not come in any more", "let them in again first"));
  return accepted({ id: member.id, userId: member.user.id, role: member.role, signInName });
}

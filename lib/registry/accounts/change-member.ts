import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { MemberSchema } from "@/lib/schemas/accounts/account-forms";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { memberHere } from "./member-here";
import { anotherOwner, checkedMembership, writeGrowOuts } from "./membership";

/** Changes what a member may do here; the last owner stays owner. */
export async function changeMember(
  db: Database,
  actor: Actor,
  memberId: string,
  input: FormTexts,
): Promise<Outcome<Performed<void>>> {
  const read = parseForm(MemberSchema, input);
  if (!read.ok) return read;
  const { note, ...wanted } = read.value;
  return perform(db, actor, { action: "members", title: "What a member may do" }, async (change, tx) => {
    const member = await memberHere(tx, memberId);
    if (!member.ok) return refused(...member.refusals);
    const membership = await checkedMembership(tx, wanted);
    if (!membership.ok) return refused(...membership.refusals);
    const { role, stewardId, growOuts } = membership.value;
    if (member.value.role === "owner" && role !== "owner") {
      const other = await anotherOwner(tx, memberId);
      if (!other.ok) return other;
    }
    change.touchNothing();
    change.title = `${member.value.signInName} is ${role} here`;
    await change.update("Member", memberId, { role, stewardId, note });
    await writeGrowOuts(change, tx, memberId, growOuts);
    return accepted(undefined);
  });
}

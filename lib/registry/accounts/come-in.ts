import { uuidv7 } from "uuidv7";
import { anybody } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import { ComeInSchema } from "@/lib/schemas/accounts/account-forms";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { perform } from "../change-set/perform";
import { authOf } from "./auth";
import { checkedPassphrase } from "./checked-passphrase";
import { type CookiesToSet, cookiesOf } from "./cookies-to-set";
import { emailOf } from "./email-of";
import { checkedMembership, writeGrowOuts } from "./membership";
import { openInvitation } from "./open-invitation";
import { hashPassphrase } from "./passphrase";
import type { Site } from "./site";
import { tryOnce } from "./tries";

/** Makes an account by an invitation, uses the invitation up, and signs the person in. The passphrase goes into no change set. */
export async function comeIn(
  db: Database,
  site: Site,
  headers: Headers,
  code: string,
  input: FormTexts,
  now: Date = new Date(),
): Promise<Outcome<CookiesToSet>> {
  const tried = await tryOnce(db, site, null, now);
  if (!tried.ok) return tried;
  const read = parseForm(ComeInSchema, input);
  if (!read.ok) return read;
  const { name, signInName, passphrase, again } = read.value;
  const chosen = checkedPassphrase(passphrase, again, [name, signInName]);
  if (!chosen.ok) return chosen;
  const password = await hashPassphrase(passphrase);
  const who = { ...anybody(), name };
  const made = await perform(db, who, { action: "come-in", title: `${name} came in` }, async (change, tx) => {
    const invitation = await openInvitation(tx, code, now);
    if (!invitation.ok) return refused(...invitation.refusals);
    if (invitation.value.forUserId !== null) {
      const needed = "follow the link once more";
      return refused(refusal("not-for-new", [], "this code", "gives a new passphrase and makes no account", needed));
    }
    const membership = await checkedMembership(tx, invitation.value);
    if (!membership.ok) return refused(...membership.refusals);
    if (await tx.user.findUnique({ where: { username: signInName } })) {
      const taken = refusal("name-taken", ["signInName"], signInName, "is taken by somebody here", "choose another");
      return refused(taken);
    }
    const { role, stewardId, growOuts } = membership.value;
    const userId = await writeAccount(tx, { name, signInName, password, now });
    const memberId = uuidv7();
    change.touchNothing();
    change.title = `${name} came in as ${role}`;
    await change.create("Member", { id: memberId, userId, role, stewardId, addedAt: now.toISOString() });
    await writeGrowOuts(change, tx, memberId, growOuts);
    await change.update("Invitation", invitation.value.id, { usedAt: now.toISOString() });
    return accepted(undefined);
  });
  if (!made.ok) return made;
  const body = { username: signInName, password: passphrase };
  const answer = await authOf(db, site).api.signInUsername({ body, headers, returnHeaders: true });
  return accepted(cookiesOf(answer.headers));
}

/** An account with its passphrase's hash. Written beside the change set: secrets never go into the history. */
export async function writeAccount(
  tx: Transaction,
  given: { readonly name: string; readonly signInName: string; readonly password: string; readonly now: Date },
): Promise<string> {
  const { name, signInName, password, now } = given;
  const id = uuidv7();
  const times = { createdAt: now, updatedAt: now };
  await tx.user.create({
    data: { id, name, email: emailOf(id), username: signInName, displayUsername: signInName, ...times },
  });
  await tx.account.create({
    data: { id: uuidv7(), accountId: id, providerId: "credential", userId: id, password, ...times },
  });
  return id;
}

import { anybody } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import { NewPassphraseSchema } from "@/lib/schemas/accounts/account-forms";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { perform } from "../change-set/perform";
import { authOf } from "./auth";
import { checkedPassphrase } from "./checked-passphrase";
import { type CookiesToSet, cookiesOf } from "./cookies-to-set";
import { openInvitation } from "./open-invitation";
import { hashPassphrase } from "./passphrase";
import type { Site } from "./site";
import { forgetTries, tryOnce } from "./tries";

/** Sets a new passphrase by a way in that the owner gave, ends every session of the account, and signs this device in. */
export async function setPassphrase(
  db: Database,
  site: Site,
  headers: Headers,
  code: string,
  input: FormTexts,
  now: Date = new Date(),
): Promise<Outcome<CookiesToSet>> {
  const tried = await tryOnce(db, site, null, now);
  if (!tried.ok) return tried;
  const read = parseForm(NewPassphraseSchema, input);
  if (!read.ok) return read;
  const { passphrase, again } = read.value;
  const same = checkedPassphrase(passphrase, again, []);
  if (!same.ok) return same;
  const password = await hashPassphrase(passphrase);
  const operation = { action: "come-in" as const, title: "A new passphrase was set" };
  const made = await perform(db, anybody(), operation, async (change, tx) => {
    const invitation = await openInvitation(tx, code, now);
    if (!invitation.ok) return refused(...invitation.refusals);
    const userId = invitation.value.forUserId ?? "";
    const member = await tx.member.findUnique({ where: { userId }, include: { user: true } });
    if (!member?.user || member.endedAt !== null) {
      return refused(refusal("unknown-member", [], "this code", "opens no account any more", "ask the owner"));
    }
    const { name, username } = member.user;
    const chosen = checkedPassphrase(passphrase, again, [name, username ?? ""]);
    if (!chosen.ok) return refused(...chosen.refusals);
    await writePassphrase(tx, userId, password, now);
    change.touchNothing();
    change.title = `${name} set a new passphrase`;
    await change.update("Invitation", invitation.value.id, { usedAt: now.toISOString() });
    return accepted(username ?? "");
  });
  if (!made.ok) return made;
  const signInName = made.value.value;
  await forgetTries(db, site, signInName);
  const body = { username: signInName, password: passphrase };
  const answer = await authOf(db, site).api.signInUsername({ body, headers, returnHeaders: true });
  return accepted(cookiesOf(answer.headers));
}

/** Puts a passphrase's hash in the place of the old one and ends every session of the account. */
export async function writePassphrase(tx: Transaction, userId: string, password: string, now: Date): Promise<void> {
  await tx.account.updateMany({
    where: { userId, providerId: "credential" },
    data: { password, updatedAt: now },
  });
  await tx.session.deleteMany({ where: { userId } });
}

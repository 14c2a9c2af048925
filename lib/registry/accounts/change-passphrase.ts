import type { Database } from "@/lib/db";
import { passphraseRefusal } from "@/lib/schemas/accounts/account-fields";
import { ChangePassphraseSchema } from "@/lib/schemas/accounts/account-forms";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { authOf } from "./auth";
import { checkedPassphrase } from "./checked-passphrase";
import { type CookiesToSet, cookiesOf } from "./cookies-to-set";
import type { SessionMember } from "./session-member";
import { signedIn } from "./sign-in";
import type { Site } from "./site";
import { forgetTries, tryOnce } from "./tries";

/** A member changes the own passphrase; every other device is signed out. */
export async function changePassphrase(
  db: Database,
  site: Site,
  headers: Headers,
  member: SessionMember,
  input: FormTexts,
  now: Date = new Date(),
): Promise<Outcome<CookiesToSet>> {
  const read = parseForm(ChangePassphraseSchema, input);
  if (!read.ok) return read;
  const { now: old, passphrase, again } = read.value;
  const chosen = checkedPassphrase(passphrase, again, [member.actor.name, member.signInName]);
  if (!chosen.ok) return chosen;
  const tried = await tryOnce(db, site, member.signInName, now);
  if (!tried.ok) return tried;
  const body = { currentPassword: old, newPassword: passphrase, revokeOtherSessions: true };
  const answer = await signedIn(() => authOf(db, site).api.changePassword({ body, headers, returnHeaders: true }));
  if (!answer) {
    const needed = "write the one that you sign in with";
    return refused(passphraseRefusal("passphrase-wrong", ["now"], "that you have now is another", needed));
  }
  await forgetTries(db, site, member.signInName);
  return accepted(cookiesOf(answer.headers));
}

import { isAPIError } from "better-auth/api";
import type { Database } from "@/lib/db";
import { foldSignInName } from "@/lib/schemas/accounts/account-fields";
import { SignInSchema } from "@/lib/schemas/accounts/account-forms";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { authOf } from "./auth";
import { type CookiesToSet, cookiesOf } from "./cookies-to-set";
import type { Site } from "./site";
import { forgetTries, tryOnce } from "./tries";

/**
 * Signs in by name and passphrase. What is wrong is told in one sentence, and an unknown name takes as long as a wrong passphrase, so that
 * nobody learns who has an account.
 */
export async function signIn(
  db: Database,
  site: Site,
  headers: Headers,
  input: FormTexts,
  now: Date = new Date(),
): Promise<Outcome<CookiesToSet>> {
  const read = parseForm(SignInSchema, input);
  if (!read.ok) return read;
  const name = foldSignInName(read.value.signInName);
  const tried = await tryOnce(db, site, name, now);
  if (!tried.ok) return tried;
  const body = { username: name, password: read.value.passphrase, rememberMe: !read.value.borrowed };
  const answer = await signedIn(() => authOf(db, site).api.signInUsername({ body, headers, returnHeaders: true }));
  if (!answer) return refused(wrong);
  await forgetTries(db, site, name);
  const userId = answer.response.user.id;
  const member = await db.read.member.findUnique({ where: { userId } });
  if (member && member.endedAt === null) return accepted(cookiesOf(answer.headers));
  await db.write.session.deleteMany({ where: { userId } });
  return refused(ended);
}

/** The answer of the library; null where it knows no such name or passphrase. */
export async function signedIn<T>(ask: () => Promise<T>): Promise<T | null> {
  try {
    return await ask();
  } catch (error) {
    if (isAPIError(error) && error.statusCode < 500) return null;
    throw error;
  }
}

const wrong: Refusal = {
  code: "not-signed-in",
  path: [],
  given: null,
  needed: "look at both, capitals too; the owner can give you a new way in",
  sentence: "The name or the passphrase is not right; look at both, capitals too; the owner can give you a new way in",
};

const ended: Refusal = {
  code: "member-ended",
  path: [],
  given: null,
  needed: "ask the owner",
  sentence: "Your way in was ended by the owner; ask them if that was not meant",
};

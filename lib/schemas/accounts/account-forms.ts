import { z } from "zod";
import { name, neededField, openField, ticked, words } from "../lots/form-fields";
import { neededChoice } from "../varieties/fields";
import { chosenPassphrase, givenPassphrase, signInName } from "./account-fields";
import { memberRoles } from "./member-roles";

const given = (needed: string) => neededField(givenPassphrase, needed);
const chosen = neededField(chosenPassphrase, "choose a passphrase, four or five words");
const again = given("write the passphrase once more");

/** Ids of grow-outs, parted by blanks or commas; no more than a helper could walk. */
const growOutIds = z
  .string()
  .optional()
  .transform((text) => (text ?? "").split(/[\s,]+/).filter((id) => id !== ""))
  .pipe(z.array(z.uuid()).max(200));

const memberShape = {
  role: neededChoice(memberRoles),
  stewardId: openField(words),
  growOuts: growOutIds,
};

/** Who is asked in: as what, for which steward, and for a helper on which grow-outs. `words` tell the owner whom the invitation is for. */
export const InvitationSchema = z.strictObject({ ...memberShape, words: openField(words) });

/** What a member may do here from now on. */
export const MemberSchema = z.strictObject({ ...memberShape, note: openField(words) });

/** Coming in by an invitation: a name to be known by, a name to sign in with, a passphrase twice. */
export const ComeInSchema = z.strictObject({
  name: neededField(name, "write the name that the others know you by"),
  signInName: neededField(signInName, "write a name to sign in with"),
  passphrase: chosen,
  again,
});

/** A new passphrase by a way in that the owner gave. */
export const NewPassphraseSchema = z.strictObject({ passphrase: chosen, again });

/** A new passphrase by the person who knows the old one. */
export const ChangePassphraseSchema = z.strictObject({
  now: given("write the passphrase that you have now"),
  passphrase: chosen,
  again,
});

/** The owner of a registry that is opened to others. */
export const OwnerSchema = z.strictObject({
  signInName: neededField(signInName, "write a name to sign in with"),
  passphrase: chosen,
});

/** Signing in. Whatever is wrong is told in one sentence for all of it. */
export const SignInSchema = z.strictObject({
  signInName: neededField(words, "write the name that you sign in with"),
  passphrase: given("write your passphrase"),
  borrowed: ticked,
});

import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { isShared } from "@/app/_session/shared";
import { siteNow } from "@/app/_session/site";
import { type AccountField, AccountForm } from "@/app/sign-in/_forms/account-form";
import { PageHead } from "@/components/frame";
import { ButtonLink } from "@/components/ui";
import { refusalSentence } from "@/lib/display/refusals";
import { showInvitation } from "@/lib/registry/accounts/open-invitation";
import { ownRegistry } from "@/lib/registry/open-registry";
import { roleAllows } from "../../members/_words/roles";
import { makeAccount, makePassphrase } from "../_actions/come-in";

// The code stands in the address: no other place is told of it. With "no-referrer" a browser would not tell us either that the form is ours.
export const metadata: Metadata = { title: "Come in", referrer: "same-origin" };

const passphrases: readonly AccountField[] = [
  {
    name: "passphrase",
    label: "Passphrase",
    hint: "12 characters or more: four or five words that have nothing to do with you",
    secret: true,
    autoComplete: "new-password",
  },
  { name: "again", label: "The same once more", secret: true, autoComplete: "new-password" },
];

const names: readonly AccountField[] = [
  { name: "name", label: "Your name", hint: "As the others here know you", autoComplete: "name" },
  { name: "signInName", label: "Name to sign in with", hint: "Short, without blanks", autoComplete: "username" },
];

/** An invitation: what it allows, and the account that it makes; or a new passphrase for one that stands. */
export default async function Invited({ params }: { params: Promise<{ code: string }> }) {
  if (!isShared()) redirect("/");
  const { code } = await params;
  const shown = await showInvitation(await ownRegistry(), await siteNow(), code);
  if (!shown.ok) {
    return (
      <div className="sheet stack">
        <PageHead title="This opens nothing">
          <p className="measure">{shown.refusals.map(refusalSentence).join(" ")}</p>
        </PageHead>
        <div className="row">
          <ButtonLink href="/come-in">Type a code</ButtonLink>
          <ButtonLink href="/sign-in" kind="quiet">
            Sign in
          </ButtonLink>
        </div>
      </div>
    );
  }
  const { role, steward, growOuts, signInName } = shown.value;
  if (signInName !== null) {
    return (
      <div className="sheet stack">
        <PageHead title="A new passphrase" kind={signInName}>
          <p className="measure">
            It takes the place of the old one, and every device of yours is signed out but this.
          </p>
        </PageHead>
        <AccountForm
          fields={passphrases}
          action={makePassphrase.bind(null, code)}
          confirm="Set the passphrase"
          sending="Setting it"
        />
      </div>
    );
  }
  return (
    <div className="sheet stack">
      <PageHead title="Come in" kind="Invitation">
        <p className="measure">{roleAllows[role]}</p>
        {steward ? <p className="measure">You keep seed for {steward} here.</p> : null}
        {growOuts.length > 0 ? <p className="measure">You write for {growOuts.join(", ")}.</p> : null}
      </PageHead>
      <AccountForm
        fields={[...names, ...passphrases]}
        action={makeAccount.bind(null, code)}
        confirm="Make my account"
        sending="Making it"
      />
    </div>
  );
}

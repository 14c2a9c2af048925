import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { PageHead } from "@/components/frame";
import { passkeyName } from "@/lib/registry/accounts/site";
import { isShared } from "../_session/shared";
import { signedIn } from "../_session/signed-in";
import { siteNow } from "../_session/site";
import { wayBack } from "../_session/way-back";
import { signInHere } from "./_actions/sign-in";
import { type AccountField, AccountForm } from "./_forms/account-form";
import { PasskeySignIn } from "./_parts/passkey-sign-in";

export const metadata: Metadata = { title: "Sign in" };

const fields: readonly AccountField[] = [
  { name: "signInName", label: "Name", autoComplete: "username" },
  { name: "passphrase", label: "Passphrase", secret: true, autoComplete: "current-password" },
];

/** Where everybody stands who has not signed in (any more); it leads back to where they were. */
export default async function SignIn({ searchParams }: { searchParams: Promise<{ then?: string }> }) {
  const then = wayBack((await searchParams).then);
  if (!isShared() || (await signedIn())) redirect(then);
  const passkeys = passkeyName(await siteNow()) !== null;
  return (
    <div className="sheet stack">
      <PageHead title="Sign in">
        {then === "/" ? null : (
          <p className="measure">Then you go on where you were. What you had typed there is kept on this device.</p>
        )}
      </PageHead>
      <AccountForm
        fields={fields}
        action={signInHere.bind(null, then)}
        confirm="Sign in"
        sending="Looking"
        tick={{
          name: "borrowed",
          label: "This is not my own device",
          note: "It is signed out when the browser is closed, and after a day at the latest",
        }}
      />
      {passkeys ? <PasskeySignIn then={then} /> : null}
      <p className="measure quiet">
        The first time you come by an <Link href="/come-in">invitation</Link>. Who has forgotten the passphrase gets a
        new way in from the owner of this registry.
      </p>
    </div>
  );
}

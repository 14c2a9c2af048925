import type { Metadata } from "next";
import { PageHead, Section } from "@/components/frame";
import { Button, Notice } from "@/components/ui";
import { listPasskeys } from "@/lib/registry/accounts/list-passkeys";
import { listSessions } from "@/lib/registry/accounts/list-sessions";
import { passkeyName } from "@/lib/registry/accounts/site";
import { ownRegistry } from "@/lib/registry/open-registry";
import { signedInOrAsked } from "../_session/signed-in";
import { siteNow } from "../_session/site";
import { Devices } from "../members/_parts/devices";
import { NotShared } from "../members/_parts/not-shared";
import { dayOf } from "../members/_words/member-words";
import { roleAllows } from "../members/_words/roles";
import { type AccountField, AccountForm } from "../sign-in/_forms/account-form";
import { endOwnDevice, leave, newPassphrase } from "./_actions/your-way-in";
import { Passkeys } from "./_parts/passkeys";

export const metadata: Metadata = { title: "Your way in" };

const fields: readonly AccountField[] = [
  { name: "now", label: "Passphrase now", secret: true, autoComplete: "current-password" },
  {
    name: "passphrase",
    label: "New passphrase",
    hint: "12 characters or more: four or five words that have nothing to do with you",
    secret: true,
    autoComplete: "new-password",
  },
  { name: "again", label: "The new one once more", secret: true, autoComplete: "new-password" },
];

export default async function YourWayIn({ searchParams }: { searchParams: Promise<{ stored?: string }> }) {
  const member = await signedInOrAsked();
  const { stored } = await searchParams;
  if (!member) {
    return (
      <div className="sheet stack">
        <PageHead title="Your way in" />
        <NotShared />
      </div>
    );
  }
  const db = await ownRegistry();
  const name = passkeyName(await siteNow());
  const devices = await listSessions(db, member.userId);
  return (
    <div className="sheet stack">
      <PageHead title="Your way in" kind={member.actor.name}>
        <p className="measure">
          {roleAllows[member.actor.role as keyof typeof roleAllows]} You sign in as{" "}
          <span className="name">{member.signInName}</span>; this device stays signed in until {dayOf(member.until)}.
        </p>
        <form action={leave}>
          <Button type="submit">Sign out here</Button>
        </form>
      </PageHead>
      {stored ? (
        <Notice title="Changed">
          <p>Your new passphrase counts from now on. Every other device was signed out.</p>
        </Notice>
      ) : null}
      <Section id="devices" title="Signed in on">
        <Devices devices={devices} here={member.sessionId} action={endOwnDevice} />
      </Section>
      <Section id="passkeys" title="Passkeys">
        <Passkeys name={name} kept={await listPasskeys(db, member.userId)} />
      </Section>
      <Section id="passphrase" title="Another passphrase">
        <AccountForm fields={fields} action={newPassphrase} confirm="Change it" sending="Changing it" />
      </Section>
    </div>
  );
}

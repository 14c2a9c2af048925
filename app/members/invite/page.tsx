import type { Metadata } from "next";
import { atHome } from "@/app/_session/at-home";
import { addressToTell } from "@/app/_session/shared";
import { PageHead } from "@/components/frame";
import { ButtonLink } from "@/components/ui";
import { invitationDays } from "@/lib/registry/accounts/invite";
import { inviteSomebody } from "../_actions/members";
import { MembershipForm } from "../_parts/membership-form";
import { NotShared } from "../_parts/not-shared";
import { choicesOf } from "../_words/choices";

export const metadata: Metadata = { title: "Invite somebody" };

export default async function Invite() {
  const { db, actor } = await atHome();
  const choices = await choicesOf(db, actor);
  const address = addressToTell();
  return (
    <div className="sheet stack">
      <PageHead title="Invite somebody" kind="Who may come in">
        <p className="measure">
          One invitation makes one account. It is good for {invitationDays} days, and until somebody comes in by it you
          can take it back.
        </p>
      </PageHead>
      {choices === null ? (
        <p className="measure">Only the owner may let somebody in.</p>
      ) : address === null ? (
        <NotShared />
      ) : (
        <MembershipForm
          now={{ role: null, stewardId: null, growOuts: [], words: null }}
          {...choices}
          action={inviteSomebody}
          confirm="Make the invitation"
          note={{ name: "words", label: "Whom it is for", hint: "A word for your own list; nobody else sees it" }}
        />
      )}
      <ButtonLink href="/members" kind="quiet">
        Back to who may come in
      </ButtonLink>
    </div>
  );
}

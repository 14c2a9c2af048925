import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { atHome } from "@/app/_session/at-home";
import { isShared } from "@/app/_session/shared";
import { PageHead, Section } from "@/components/frame";
import { AskTwice, ButtonLink, Notice } from "@/components/ui";
import { refusalSentence } from "@/lib/display/refusals";
import { listMembers } from "@/lib/registry/accounts/list-members";
import { listSessions } from "@/lib/registry/accounts/list-sessions";
import { endDevice, endWayIn, giveWayIn, openWayIn, storeMember } from "../_actions/members";
import { Devices } from "../_parts/devices";
import { MembershipForm } from "../_parts/membership-form";
import { NewWayIn } from "../_parts/new-way-in";
import { choicesOf } from "../_words/choices";
import { dayOf, membershipInWords, nameOf } from "../_words/member-words";

export const metadata: Metadata = { title: "Who may come in" };

export default async function Member({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<{ refused?: string }>;
}) {
  const { db, actor } = await atHome();
  const { id } = await params;
  const { refused } = await searchParams;
  const listed = await listMembers(db, actor);
  const choices = await choicesOf(db, actor);
  if (!listed.ok || choices === null) {
    return (
      <div className="sheet stack">
        <PageHead title="Who may come in">
          <p className="measure">{listed.ok ? "" : listed.refusals.map(refusalSentence).join(" ")}</p>
        </PageHead>
      </div>
    );
  }
  const member = listed.value.members.find((each) => each.id === id);
  if (!member) notFound();
  const back = (
    <ButtonLink href="/members" kind="quiet">
      Back to who may come in
    </ButtonLink>
  );
  const named = <input type="hidden" name="id" value={member.id} />;
  const head = (
    <>
      <PageHead title={nameOf(member)} kind="Who may come in">
        <p className="measure">
          {membershipInWords(member)}; signs in as <span className="name">{member.signInName ?? "nobody"}</span>, since{" "}
          {dayOf(member.addedAt)}.
        </p>
      </PageHead>
      {refused ? (
        <Notice kind="waiting" title="Not done">
          <p>{refused}</p>
        </Notice>
      ) : null}
    </>
  );
  if (member.endedAt !== null) {
    return (
      <div className="sheet stack">
        {head}
        <p className="measure">
          May not come in any more since {dayOf(member.endedAt)}. What they wrote stays, with their name.
        </p>
        {member.userId ? (
          <AskTwice
            button="Let them in again"
            title={`Let ${nameOf(member)} in again?`}
            says="As what they were, with the passphrase that they have."
            confirm="Let them in"
            kind="people"
            action={openWayIn}
          >
            {named}
          </AskTwice>
        ) : null}
        {back}
      </div>
    );
  }
  const devices = member.userId ? await listSessions(db, member.userId) : [];
  return (
    <div className="sheet stack">
      {head}
      <Section id="membership" title="What they may do here">
        <MembershipForm
          now={{
            role: member.role,
            stewardId: member.stewardId,
            growOuts: member.growOuts.map((each) => each.id),
            words: member.note,
          }}
          {...choices}
          action={storeMember.bind(null, member.id)}
          confirm="Store it"
          note={{ name: "note", label: "Note", hint: "For your own list; nobody else sees it" }}
        />
      </Section>
      <Section id="devices" title="Signed in on">
        <Devices devices={devices} action={endDevice.bind(null, member.id)} />
      </Section>
      <Section id="way-in" title="Passphrase forgotten, or gone for good">
        <div className="stack">
          {isShared() ? <NewWayIn action={giveWayIn.bind(null, member.id)} /> : null}
          <AskTwice
            button="End their way in"
            title={`End the way in of ${nameOf(member)}?`}
            says="They are signed out everywhere at once. What they wrote stays, with their name; you can let them in again."
            confirm="End it"
            kind="people"
            action={endWayIn}
          >
            {named}
          </AskTwice>
        </div>
      </Section>
      {back}
    </div>
  );
}

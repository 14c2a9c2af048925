import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/components/empty";
import { PageHead, Section } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { AskTwice, ButtonLink, Notice } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import { listMembers } from "@/lib/registry/accounts/list-members";
import { atHome } from "../_session/at-home";
import { isShared } from "../_session/shared";
import { takeInvitationBack } from "./_actions/members";
import { NotShared } from "./_parts/not-shared";
import { dayOf, membershipInWords, nameOf } from "./_words/member-words";
import styles from "./members.module.css";

export const metadata: Metadata = { title: "Who may come in" };

export default async function Members({ searchParams }: { searchParams: Promise<{ refused?: string }> }) {
  const { db, actor } = await atHome();
  const { refused } = await searchParams;
  const listed = await listMembers(db, actor);
  if (!listed.ok) {
    return (
      <div className="sheet stack">
        <PageHead title="Who may come in">
          <p className="measure">{listed.refusals.map(refusalSentence).join(" ")}</p>
        </PageHead>
      </div>
    );
  }
  const { members, invitations } = listed.value;
  const shared = isShared();
  const here = members.filter((member) => member.endedAt === null);
  const ended = members.filter((member) => member.endedAt !== null);
  const inviteLink = (
    <ButtonLink href="/members/invite" kind="chief">
      Invite somebody
    </ButtonLink>
  );
  if (members.length === 0) {
    return (
      <div className="sheet stack">
        <PageHead title="Who may come in" />
        <EmptyState noun="sharing">You alone, at this machine. There is nothing to sign into.</EmptyState>
        <NotShared />
      </div>
    );
  }
  return (
    <div className="sheet stack">
      <PageHead
        title="Who may come in"
        figure={
          <Figure value={counted(here.length, "person", "people")}>
            {invitations.length === 0 ? "No invitation is open." : `${counted(invitations.length, "invitation")} open.`}
          </Figure>
        }
        actions={shared ? inviteLink : undefined}
      />
      {refused ? (
        <Notice kind="waiting" title="Not done">
          {refused}
        </Notice>
      ) : null}
      {shared ? null : <NotShared />}
      <Section id="here" title="May come in">
        <ul className={styles.people}>
          {here.map((member) => (
            <li key={member.id}>
              <Link href={`/members/${member.id}`} className={styles.name}>
                {nameOf(member)}
              </Link>
              <span>{membershipInWords(member)}</span>
              <span className={styles.aside}>
                {member.devices === 0 ? "signed in nowhere" : `on ${counted(member.devices, "device")}`}
              </span>
            </li>
          ))}
        </ul>
      </Section>
      {invitations.length > 0 ? (
        <Section id="open" title="Open invitations">
          <ul className={styles.people}>
            {invitations.map((each) => (
              <li key={each.id}>
                <span className={styles.name}>
                  {each.forSignInName
                    ? `A new passphrase for ${each.forSignInName}`
                    : (each.words ?? "no word on whom")}
                </span>
                <span>
                  {membershipInWords({ ...each, growOuts: [] })}, until {dayOf(each.expiresAt)}
                </span>
                <span className={styles.aside}>
                  <AskTwice
                    button="Take it back"
                    buttonKind="quiet"
                    title="Take this invitation back?"
                    says="Nobody can come in by it any more."
                    confirm="Take it back"
                    kind="people"
                    action={takeInvitationBack}
                  >
                    <input type="hidden" name="id" value={each.id} />
                  </AskTwice>
                </span>
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      {ended.length > 0 ? (
        <Section id="ended" title="May not come in any more">
          <ul className={styles.people}>
            {ended.map((member) => (
              <li key={member.id}>
                <Link href={`/members/${member.id}`} className={styles.name}>
                  {nameOf(member)}
                </Link>
                <span>{membershipInWords(member)}</span>
                <span className={styles.aside}>ended {dayOf(member.endedAt ?? "")}</span>
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      {shared ? (
        <p className="measure quiet">
          A new device begins at <Link href="/certificate">the page on the certificate</Link>, whose address and code to
          scan stand there.
        </p>
      ) : null}
    </div>
  );
}

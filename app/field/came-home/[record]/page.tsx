import type { Metadata } from "next";
import { cookies } from "next/headers";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { ButtonLink, Notice } from "@/components/ui";
import { Offered } from "@/components/ui/offered";
import { dayInWords } from "@/lib/display/dates";
import { readSentRecord } from "@/lib/registry/field/read-sent-record";
import { current } from "../../../_session/current";
import { zoneCookie } from "../../../_session/zone-cookie";
import { momentInWords } from "../../../safe-keeping/_words/health-words";
import { SettleForm } from "../../_desk/settle-forms";
import { clockInWords, recordedInWords, saidInWords } from "../../_words/sent-words";

export const metadata: Metadata = { title: "A record from the field" };

/** One record as a phone sent it, and the settling of it. */
export default async function SentRecord({ params }: { params: Promise<{ record: string }> }) {
  const { db } = await current("correct-in-field");
  const read = await readSentRecord(db, (await params).record);
  if (!read) notFound();
  const zone = (await cookies()).get(zoneCookie)?.value;
  const { sent, growOut } = read;
  const home = growOut ? `/field/came-home?growOut=${growOut.id}` : "/field/came-home";
  const clock = clockInWords(read.clockAhead);
  const said = saidInWords(sent);
  return (
    <div className="sheet stack">
      <PageHead
        title={`${said.charAt(0).toUpperCase()}${said.slice(1)}`}
        kind={growOut ? <Link href={home}>From the field, grow-out {growOut.name}</Link> : "From the field"}
        mark={<Icon name="page-in" size={32} />}
      >
        <p className="lead measure">{standingOf(read)}</p>
      </PageHead>
      <Section id="sent" title="As it was sent">
        <dl className="stack-near">
          <div>
            <dt>In the field</dt>
            <dd>
              {dayInWords(sent.on)}; recorded {recordedInWords(sent.recordedAt, sent.recordedOffset)} by the phone’s
              clock
              {clock ? `, which was ${clock} when it sent this` : ""}
            </dd>
          </div>
          <div>
            <dt>Arrived</dt>
            <dd>{momentInWords(read.arrivedAt, zone, new Date())}</dd>
          </div>
          <div>
            <dt>By</dt>
            <dd>
              phone {read.phone}, its record no. {sent.sequence}
              {read.by ? `; the hand of ${read.by}` : ""}
            </dd>
          </div>
          {"plant" in sent.body && sent.body.plant ? (
            <div>
              <dt>Plant</dt>
              <dd>{placeOf(sent.body.plant)}</dd>
            </div>
          ) : null}
          {"words" in sent.body && sent.body.words ? (
            <div>
              <dt>Words</dt>
              <dd className="told">{sent.body.words}</dd>
            </div>
          ) : null}
          {"note" in sent.body && sent.body.note ? (
            <div>
              <dt>Note</dt>
              <dd className="told">{sent.body.note}</dd>
            </div>
          ) : null}
        </dl>
      </Section>
      {read.state === "question" ? (
        <Section id="settle" title="What a person says of it">
          <div className="stack">
            {read.reasons.length > 0 ? (
              <Notice kind="waiting" title={read.waiting ? "Waits" : "Stands against it"}>
                {read.reasons.map((reason) => (
                  <p key={reason}>
                    {reason.charAt(0).toUpperCase()}
                    {reason.slice(1)}.
                  </p>
                ))}
              </Notice>
            ) : null}
            <Offered
              deed="correct-in-field"
              otherwise={<p>Whose grow-out it is says what becomes of it, or the owner.</p>}
            >
              {sent.kind === "harvest" && growOut ? (
                <p className="row">
                  <ButtonLink href={`/grow-outs/${growOut.id}/harvest?sent=${read.id}`} kind="chief">
                    Enter this harvest
                  </ButtonLink>
                  <span>The form stands filled in with what the phone recorded.</span>
                </p>
              ) : null}
              <SettleForm recordId={read.id} alike={read.alike} ways={read.ways} back={home} />
            </Offered>
          </div>
        </Section>
      ) : null}
    </div>
  );
}

function standingOf({ state, waiting, answer }: { state: string; waiting: boolean; answer: string | null }): string {
  if (state === "taken") return answer ? `It stands in the registry. ${answer}.` : "It stands in the registry.";
  if (state === "set aside")
    return answer ? `It is set aside: ${answer}.` : "It is set aside; nothing is entered of it.";
  return waiting
    ? "It is stored, and waits for something that has not come yet."
    : "It is stored as it was sent, and a person has to say what becomes of it.";
}

function placeOf({
  name,
  cell,
  row,
  position,
}: {
  name: string;
  cell: string | null;
  row: string | null;
  position: number | null;
}): string {
  const parts = [name, cell && `in ${cell}`, row && `row ${row}`, position !== null && `place ${position}`];
  return parts.filter(Boolean).join(", ");
}

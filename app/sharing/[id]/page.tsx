import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { PageHead, Section } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import { SimpleTable } from "@/components/tables";
import { ButtonLink, Notice } from "@/components/ui";
import { Offered, Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import type { UnitSettings } from "@/lib/display/units";
import { readTransfer, type TransferRead } from "@/lib/registry/transfers/read-transfer";
import { fromOutside } from "@/lib/registry/transfers/sharing-by-year";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../_session/current";
import { HistoryOf } from "../../history/_components/history-of";
import { kindInWords as ledgerKind } from "../../lots/_words/ledger-words";
import { unitsOf } from "../../lots/_words/units-of";
import { AnswerForm } from "../_parts/answer-form";
import { PromiseLine } from "../_parts/promise-line";
import styles from "../_parts/sharing.module.css";
import { amountInWords, doneInWords, kindInWords } from "../_words/transfer-words";

type Props = { params: Promise<{ id: string }> };

const transferOf = cache(async (id: string) => readTransfer((await current("desk")).db, id));

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const read = await transferOf((await params).id);
  return { title: read ? `${capital(kindInWords(read.transfer.kind))} of lot ${read.lot.number}` : "No such transfer" };
}

export default async function Transfer({ params }: Props) {
  const { settings, today } = await current("desk");
  const read = await transferOf((await params).id);
  if (!read) notFound();
  const { transfer, lot, sides, promises } = read;
  const units = unitsOf(settings);
  const at = `/sharing/${transfer.id}`;
  const cameIn = fromOutside(transfer);
  return (
    <div className="sheet stack">
      <PageHead
        title={`${capital(kindInWords(transfer.kind))} of lot ${lot.number}`}
        kind={<Link href={`/varieties/${lot.varietyId}`}>{lot.variety}</Link>}
        mark={<SeedCoat name={lot.variety} crop={lot.crop.cropKey} coat={storedSeedCoat(lot.seedCoat)} size={56} />}
        figure={
          <Figure value={capital(amountInWords(transfer.amount, transfer.unit, units))}>
            {handsSentence(read, cameIn)}
          </Figure>
        }
        actions={
          <>
            {cameIn ? null : (
              <ButtonLink href={`${at}/slip`} kind="chief">
                The hand-over slip
              </ButtonLink>
            )}
            {transfer.kind === "loan" ? (
              <ButtonLink href={`/sharing/take-in?answers=${transfer.id}`}>It comes back</ButtonLink>
            ) : null}
            {transfer.kind === "exchange" && !cameIn ? (
              <ButtonLink href={`/sharing/take-in?kind=exchange&exchange=${transfer.id}`}>What came for it</ButtonLink>
            ) : null}
            <ButtonLink href={`${at}/correct`} kind="quiet">
              Put it right
            </ButtonLink>
          </>
        }
      />
      {transfer.note ? (
        <Notice title="Noted with it">
          {transfer.note.split("\n").map((line) => (
            <p key={line}>{line}</p>
          ))}
        </Notice>
      ) : null}
      <Section id="sides" title="In the ledgers">
        <Sides read={read} units={units} />
      </Section>
      {cameIn ? null : (
        <Section id="told" title="What was told with it">
          <div className="stack">
            {transfer.told ? (
              <ul className={styles.told}>
                {transfer.told.split("\n").map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            ) : (
              <p className="quiet">Nothing is written of what was said. Not written is not the same as not said.</p>
            )}
            <dl className="particulars">
              <Said name="What for" words={transfer.purpose} />
              <Said name="On what terms" words={transfer.conditions} />
              <Said name="Ask by" words={transfer.replyDue && dateInWords(transfer.replyDue)} />
            </dl>
          </div>
        </Section>
      )}
      {promises.length > 0 ? (
        <Section id="promises" title="What was promised">
          {promises.map((promise) => (
            <PromiseLine
              key={promise.id}
              promise={promise}
              who={read.to ?? transfer.toWords}
              today={today}
              leadsTo={at}
            />
          ))}
        </Section>
      ) : null}
      {cameIn ? null : (
        <Offered deed="desk">
          <Section id="answer" title="What they answered">
            <AnswerForm transferId={transfer.id} today={today} holder={transfer.toStewardId !== null} />
          </Section>
        </Offered>
      )}
      {sides.length === 0 && transfer.newLotId === null && transfer.toStewardId === transfer.fromStewardId ? null : (
        <p className="quiet measure">
          Seed that was handed over stays handed over. Where only the record is mistaken,{" "}
          {read.changeSetId ? <Way href={`/history/${read.changeSetId}`}>take it back in History</Way> : "put it right"}
          .
        </p>
      )}
      <HistoryOf ids={[transfer.id, ...promises.map(({ id }) => id)]} asOf={transfer.id} />
    </div>
  );
}

function handsSentence({ transfer, from, to, newNumber }: TransferRead, cameIn: boolean): string {
  const when = dateInWords(transfer.on);
  const hand = to ?? transfer.toWords ?? "somebody whose name is not kept";
  if (cameIn) return `came in on ${when}${from ? ` from ${from}` : " from outside"}${to ? `, to ${to}` : ""}.`;
  if (from !== null && from === to) return `stand in another building of ${from} since ${when}; they stay in the lot.`;
  const as = newNumber ? `, there as lot ${newNumber}` : "";
  return `${doneInWords(transfer.kind)}${from ? ` by ${from}` : ""} to ${hand}, ${when}${as}.`;
}

/** Both sides, as the ledgers say them. */
function Sides({ read: { sides, transfer }, units }: { read: TransferRead; units: UnitSettings }) {
  if (sides.length === 0) {
    const own = transfer.toStewardId !== null && transfer.toStewardId === transfer.fromStewardId;
    return (
      <p className="quiet">
        {own ? "No ledger says of it: the seed never left its lot." : "No entry of a ledger belongs to it."}
      </p>
    );
  }
  return (
    <SimpleTable
      columns={[
        { key: "lot", name: "Lot" },
        { key: "what", name: "What" },
        { key: "amount", name: "How much", kind: "count" },
      ]}
      rows={sides.map((side) => ({
        id: side.entryId,
        cells: {
          lot: <Link href={`/lots/${side.lotId}#ledger`}>{side.number}</Link>,
          what: `${ledgerKind(side.kind)}, ${dateInWords(side.on)}`,
          amount: amountInWords(side.amount, side.unit, units),
        },
      }))}
    />
  );
}

function Said({ name, words }: { name: string; words: string | null }) {
  if (!words) return null;
  return (
    <>
      <dt>{name}</dt>
      <dd>{words}</dd>
    </>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

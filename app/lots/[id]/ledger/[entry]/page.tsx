import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Section } from "@/components/frame";
import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { readEntry } from "@/lib/registry/ledger/read-entry";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../../_session/current";
import { LotPageHead } from "../../../_parts/lot-page-head";
import { blendKindOptions, ledgerKindOptions } from "../../../_words/ledger-words";
import { unitsOf, weightAsTyped } from "../../../_words/units-of";
import { CorrectEntryForm, TakeBackForm } from "./correct-entry-form";

export const metadata: Metadata = { title: "Put an entry right" };

export default async function CorrectEntry({ params }: { params: Promise<{ id: string; entry: string }> }) {
  const { db, settings } = await current("correct-at-desk");
  const { id, entry: entryId } = await params;
  const lot = await readHead(db.read, id);
  const entry = await readEntry(db.read, id, entryId);
  if (!lot || !entry) notFound();
  const units = unitsOf(settings);
  const blended = entry.kind.startsWith("blended");
  const start = {
    kind: entry.kind,
    amount: entry.unit === "g" ? weightAsTyped(entry.amount, units) : String(entry.amount),
    unit: entry.unit,
    on: entry.on,
    other: entry.other ?? "",
    notes: entry.notes ?? "",
  };
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="Put an entry right" />
      {entry.transferId ? (
        <Notice title="This entry is one side of a hand-over">
          <p>
            Both ledgers say it, and they are put right together.{" "}
            <Way href={`/sharing/${entry.transferId}`}>To the hand-over</Way>
          </p>
        </Notice>
      ) : entry.counts ? (
        <>
          <CorrectEntryForm
            lotId={id}
            entryId={entryId}
            start={start}
            kinds={blended ? blendKindOptions.filter((each) => each.value === entry.kind) : ledgerKindOptions}
            weightUnit={units.weight}
            seeds={lot.thousandSeedGrams !== null}
          />
          <Section title="It never should have stood" id="take-back">
            <TakeBackForm lotId={id} entryId={entryId} />
          </Section>
        </>
      ) : (
        <Notice title="This entry counts no more">
          <p>
            A later entry stands in its place. <Link href={`/lots/${id}#ledger`}>Back to the ledger</Link>
          </p>
        </Notice>
      )}
    </div>
  );
}

"use client";

import { writeEntry } from "../../../_actions/ledger";
import { LotForm } from "../../../_form/lot-form";
import { ledgerKindOptions } from "../../../_words/ledger-words";
import { EntryFields, entryLabels } from "../entry-fields";

/** One more entry of a lot's ledger. */
export function NewEntryForm({
  lotId,
  start,
  weightUnit,
  seeds,
}: {
  lotId: string;
  start: Readonly<Record<string, string>>;
  weightUnit: "g" | "oz";
  seeds: boolean;
}) {
  return (
    <LotForm
      draft={`lot:${lotId}:entry`}
      deed={writeEntry.bind(null, lotId)}
      start={start}
      labels={entryLabels}
      submit="Write it down"
      back={`/lots/${lotId}#ledger`}
      standing="A mistaken entry can be put right or taken back. Seed that was sown, given or discarded is gone all the same."
    >
      {(field) => <EntryFields field={field} kinds={ledgerKindOptions} weightUnit={weightUnit} seeds={seeds} />}
    </LotForm>
  );
}

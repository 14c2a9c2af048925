"use client";

import { type Option, TextField } from "@/components/ui";
import { putEntryRight, takeEntryBack } from "../../../_actions/ledger";
import { LotForm } from "../../../_form/lot-form";
import { EntryFields, entryLabels } from "../entry-fields";

/** An entry as it should have been. */
export function CorrectEntryForm({
  lotId,
  entryId,
  start,
  kinds,
  weightUnit,
  seeds,
}: {
  lotId: string;
  entryId: string;
  start: Readonly<Record<string, string>>;
  kinds: readonly Option[];
  weightUnit: "g" | "oz";
  seeds: boolean;
}) {
  return (
    <LotForm
      draft={`lot:${lotId}:entry:${entryId}`}
      deed={putEntryRight.bind(null, lotId, entryId)}
      start={start}
      labels={entryLabels}
      submit="Put the entry right"
      back={`/lots/${lotId}#ledger`}
      standing="The entry that stood here stays to be read and counts no more."
    >
      {(field) => (
        <>
          <EntryFields field={field} kinds={kinds} weightUnit={weightUnit} seeds={seeds} />
          <TextField {...field("reason")} label="What was wrong" required />
        </>
      )}
    </LotForm>
  );
}

/** An entry that never should have stood. */
export function TakeBackForm({ lotId, entryId }: { lotId: string; entryId: string }) {
  return (
    <LotForm
      draft={`lot:${lotId}:entry:${entryId}:back`}
      deed={takeEntryBack.bind(null, lotId, entryId)}
      start={{}}
      labels={entryLabels}
      submit="Take the entry back"
      back={`/lots/${lotId}#ledger`}
      standing="This takes back what was written, not what was done: seed that really left the jar does not come back by it."
    >
      {(field) => <TextField {...field("reason")} id="field-back-reason" label="What was wrong" required />}
    </LotForm>
  );
}

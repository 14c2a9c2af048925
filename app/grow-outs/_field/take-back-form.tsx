"use client";

import { Section } from "@/components/frame";
import { TextField } from "@/components/ui";
import type { FieldTable } from "@/lib/registry/grow-outs/field-entries";
import { LotForm } from "../../lots/_form/lot-form";
import { takeFieldRecordBack } from "../_actions/field";

/** An entry that never should have stood. */
export function TakeBackSection({
  growOutId,
  table,
  entryId,
}: {
  growOutId: string;
  table: FieldTable;
  entryId: string;
}) {
  return (
    <Section title="It never should have stood" id="take-back">
      <LotForm
        draft={`grow-out:${growOutId}:${entryId}:back`}
        deed={takeFieldRecordBack.bind(null, growOutId, table, entryId)}
        start={{}}
        labels={{ why: "What was wrong", entry: "The entry" }}
        submit="Take it back"
        back={`/grow-outs/${growOutId}#counts`}
        standing="This takes back what was written, with what it had replaced. It stays in the history, which can put it back; plants that were pulled stay pulled."
      >
        {(field) => <TextField {...field("why")} id="field-back-why" label="What was wrong" required />}
      </LotForm>
    </Section>
  );
}

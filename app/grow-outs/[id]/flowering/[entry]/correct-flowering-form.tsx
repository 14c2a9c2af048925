"use client";

import { DateField, type Option, Select, TextField } from "@/components/ui";
import { SideBySide } from "../../../../lots/_form/lot-form";
import { putFloweringRight } from "../../../_actions/field";
import { EveningForm } from "../../../_field/evening-form";

/** A flowering note as it should have been. */
export function CorrectFloweringForm({
  growOutId,
  noteId,
  start,
  organs,
  moments,
}: {
  growOutId: string;
  noteId: string;
  start: Readonly<Record<string, string>>;
  organs: readonly Option[];
  moments: readonly Option[];
}) {
  const back = `/grow-outs/${growOutId}#counts`;
  return (
    <EveningForm
      draft={`grow-out:${growOutId}:flowering:${noteId}`}
      deed={putFloweringRight.bind(null, noteId)}
      start={start}
      labels={{ organ: "What flowered", moment: "How far", on: "On", why: "What was wrong" }}
      submit="Put the note right"
      back={back}
      leadsTo={back}
      standing="The note that stood here stays to be read and counts no more."
    >
      {(field) => (
        <>
          <SideBySide>
            <Select {...field("organ")} label="What flowered" options={organs} required />
            <Select {...field("moment")} label="How far" options={moments} required />
          </SideBySide>
          <DateField {...field("on")} label="On" required />
          <TextField {...field("note")} label="Note" />
          <TextField {...field("why")} label="What was wrong" required />
        </>
      )}
    </EveningForm>
  );
}

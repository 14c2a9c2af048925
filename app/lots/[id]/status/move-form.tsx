"use client";

import { Choice, DateField, type Option, TextField } from "@/components/ui";
import { LotForm } from "../../_form/lot-form";
import { move } from "./actions";

/** A lot that goes on in its life, with day and reason. */
export function MoveForm({ lotId, today, options }: { lotId: string; today: string; options: readonly Option[] }) {
  return (
    <LotForm
      draft={`lot:${lotId}:move`}
      deed={move.bind(null, lotId)}
      start={{ on: today }}
      labels={{ status: "How it stands", reason: "Why, and who saw it", on: "When" }}
      submit="Move it on"
      back={`/lots/${lotId}`}
      standing="An entry in the records: it can be taken back. Seed that was thrown away stays thrown away."
    >
      {(field) => (
        <>
          <Choice {...field("status")} label="From now on it is" options={options} required />
          <TextField {...field("reason")} label="Why, and who saw it" lines={2} required />
          <DateField {...field("on")} label="When" required />
        </>
      )}
    </LotForm>
  );
}

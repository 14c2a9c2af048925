"use client";

import { Choice, DateField, type Option, TextField } from "@/components/ui";
import { LotForm } from "../../../lots/_form/lot-form";
import { end } from "../../_actions/end";

/** How a grow-out ended, when, and why. */
export function EndForm({
  growOutId,
  start,
  options,
}: {
  growOutId: string;
  start: Readonly<Record<string, string>>;
  options: readonly (Option & { note: string })[];
}) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:end`}
      deed={end.bind(null, growOutId)}
      start={start}
      labels={{ end: "How it ended", endedOn: "When", cause: "Why" }}
      submit="Write it down"
      back={`/grow-outs/${growOutId}`}
      standing="This is an entry in the records: a grow-out that is ended can be said to stand again."
    >
      {(field) => (
        <>
          <Choice {...field("end")} label="How it ended" options={options} required />
          <DateField {...field("endedOn")} label="The last day that its plants were kept for" />
          <TextField
            {...field("cause")}
            label="Why"
            hint="the cause of a failure in a few words: hail, deer, damping off, nobody knows"
            lines={2}
          />
        </>
      )}
    </LotForm>
  );
}

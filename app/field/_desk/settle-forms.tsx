"use client";

import { Choice, TextField, Tick } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { LotForm } from "../../lots/_form/lot-form";
import { answerSame, plantAlone, settleRecord } from "../_actions/settle";

/** What becomes of a record that a person has looked at. */
export function SettleForm({
  recordId,
  alike,
  ways,
  back,
}: {
  recordId: string;
  /** others against which the same stands, with it */
  alike: readonly string[];
  ways: { readonly keep: boolean; readonly day: boolean };
  back: string;
}) {
  const options = [
    ...(ways.keep ? [{ value: "keep", words: "It stands as it was recorded" }] : []),
    ...(ways.day ? [{ value: "day", words: "It stands, on another day", note: "the phone’s calendar was wrong" }] : []),
    { value: "set aside", words: "It is set aside", note: "nothing is entered; what was sent stays to be read" },
  ];
  return (
    <LotForm
      draft={`field:${recordId}:settle`}
      deed={settleRecord.bind(null, recordId, alike, back)}
      start={{}}
      labels={{ how: "What becomes of it", on: "The day in the field", why: "How you know" }}
      submit="Settle it"
      back={back}
      standing="What the phone sent is kept as it was sent, whatever you choose; History can take this back."
    >
      {(field) => (
        <>
          <Choice {...field("how")} label="What becomes of it" options={options} required />
          {ways.day ? (
            <TextField {...field("on")} label="The day in the field" hint="where another day is right: 2026-07-04" />
          ) : null}
          {alike.length > 1 ? (
            <Tick
              name="alike"
              label={`Settle all ${counted(alike.length, "record")} of this phone alike`}
              note="the same stands against each of them"
              checked={field("alike").value === "yes"}
            />
          ) : null}
          <TextField {...field("why")} label="How you know" lines={2} required />
        </>
      )}
    </LotForm>
  );
}

/** Whether two records are one plant. */
export function SamePlantForm({
  questionId,
  lead,
  other,
  back,
}: {
  questionId: string;
  lead: string;
  other: string;
  back: string;
}) {
  const options = [
    { value: "one", words: "They are one plant", note: `both are read as plant ${lead}; nothing is rewritten` },
    { value: "two", words: "They are two plants", note: `${lead} and ${other} stay as they are` },
  ];
  return (
    <LotForm
      draft={`field:${questionId}:same`}
      deed={answerSame.bind(null, questionId, back)}
      start={{}}
      labels={{ same: "One plant, or two", why: "How you know" }}
      submit="Answer"
      back={back}
      standing="Marks and scores of both stay with the record under which they were written, so that this can be taken back just as it was."
    >
      {(field) => (
        <>
          <Choice {...field("same")} label="One plant, or two" options={options} required />
          <TextField
            {...field("why")}
            label="How you know"
            hint="looked at the row, asked the other hand"
            lines={2}
            required
          />
        </>
      )}
    </LotForm>
  );
}

/** A record stands for a plant of its own again. */
export function PlantAloneForm({ plantId, name, back }: { plantId: string; name: string; back: string }) {
  return (
    <LotForm
      draft={`field:${plantId}:alone`}
      deed={plantAlone.bind(null, plantId, back)}
      start={{}}
      labels={{ why: "How you know" }}
      submit={`Let plant ${name} stand for itself`}
      back={back}
      standing="It has the marks and scores that were its own all along."
    >
      {(field) => <TextField {...field("why")} label="How you know that they are two after all" lines={2} required />}
    </LotForm>
  );
}

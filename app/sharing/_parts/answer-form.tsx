"use client";

import { Choice, DateField, TextField } from "@/components/ui";
import { LotForm } from "../../lots/_form/lot-form";
import { writeAnswer } from "../_actions/transfers";

const stillOptions = [
  { value: "yes", words: "They still have it" },
  { value: "no", words: "It is gone" },
  { value: "unknown", words: "They do not know" },
];

/** What whoever got the seed answered; of a steward it is a holder's word as well. */
export function AnswerForm({ transferId, today, holder }: { transferId: string; today: string; holder: boolean }) {
  return (
    <LotForm
      draft={`transfer:${transferId}:answer`}
      deed={writeAnswer.bind(null, transferId)}
      start={{ on: today }}
      labels={{ words: "What they said", on: "When", still: "Is the seed still there" }}
      submit="Write the answer down"
      back="/sharing"
      standing="An entry in the records: it can be taken back. No answer is waited for after it."
    >
      {(field) => (
        <>
          <TextField {...field("words")} label="What they said" lines={2} required />
          {holder ? <Choice {...field("still")} label="Is the seed still there?" options={stillOptions} /> : null}
          <DateField {...field("on")} label="When" required />
        </>
      )}
    </LotForm>
  );
}

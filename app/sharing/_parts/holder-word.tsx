"use client";

import { useRouter } from "next/navigation";
import { useActionState, useEffect } from "react";
import { AskTwice, Choice, DateField, Notice, TextField } from "@/components/ui";
import { refusalSentence } from "@/lib/display/refusals";
import type { FormAnswer } from "../../lots/_form/form-answer";
import { holderSaid } from "../_actions/transfers";

const unanswered: FormAnswer = { typed: {}, refusals: [], done: null };

const options = [
  { value: "yes", words: "Yes, still there" },
  { value: "no", words: "No, it is gone" },
  { value: "unknown", words: "They do not know" },
];

/** What a holder says of their seed, written down where the list is. */
export function HolderWord({
  varietyId,
  stewardId,
  steward,
  today,
  lots,
}: {
  varietyId: string;
  stewardId: string;
  steward: string;
  today: string;
  lots: readonly string[];
}) {
  const router = useRouter();
  const [answer, send] = useActionState(holderSaid.bind(null, varietyId, steward), unanswered);
  useEffect(() => {
    if (answer.done !== null) router.refresh();
  }, [answer, router]);
  return (
    <div className="not-on-paper">
      {answer.refusals.length > 0 ? (
        <Notice kind="waiting" title="Nothing was stored yet">
          {answer.refusals.map((refusal) => (
            <p key={refusal.sentence}>{refusalSentence(refusal)}</p>
          ))}
        </Notice>
      ) : null}
      <AskTwice
        button={
          <>
            Their word<span className="heard">: {steward}</span>
          </>
        }
        title={`What ${steward} says`}
        says={lots.length > 0 ? <p>On record there: {lots.join(", ")}.</p> : null}
        confirm="Write it down"
        kind="entry"
        action={send}
      >
        <Choice
          name="still"
          id={`still-${stewardId}`}
          label="Is the seed still there?"
          options={options}
          value="yes"
          required
        />
        <DateField name="on" id={`on-${stewardId}`} label="When it was said" value={today} required />
        <TextField name="note" id={`note-${stewardId}`} label="Note" />
      </AskTwice>
    </div>
  );
}

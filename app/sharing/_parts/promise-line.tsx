"use client";

import { useRouter } from "next/navigation";
import { useActionState, useEffect } from "react";
import { AskTwice, DateField, Notice, TextField } from "@/components/ui";
import { useClosed } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { refusalSentence } from "@/lib/display/refusals";
import type { FormAnswer } from "../../lots/_form/form-answer";
import { promiseKept, promiseLetGo } from "../_actions/transfers";
import styles from "./sharing.module.css";

const unanswered: FormAnswer = { typed: {}, refusals: [], done: null };

/** A promise: who gave it, by when, and what came of it. */
export function PromiseLine({
  promise,
  who,
  of,
  late,
  today,
  leadsTo,
}: {
  promise: { readonly id: string; readonly words: string; readonly due: string | null; readonly keptOn: string | null };
  who: string | null;
  /** the variety it is about, where the page does not say so */
  of?: string | null;
  late?: boolean;
  today: string;
  leadsTo: string;
}) {
  const router = useRouter();
  const looksOnly = useClosed().deeds.includes("desk");
  const [kept, sendKept] = useActionState(promiseKept.bind(null, promise.id, leadsTo), unanswered);
  const [gone, sendGone] = useActionState(promiseLetGo.bind(null, promise.id, leadsTo), unanswered);
  const done = kept.done ?? gone.done;
  useEffect(() => {
    if (done !== null) router.refresh();
  }, [done, router]);
  const refusals = [...kept.refusals, ...gone.refusals];
  const due = promise.due === null ? "no day was named" : `by ${dateInWords(promise.due)}`;
  return (
    <div className={styles.promise} id={`promise-${promise.id}`}>
      <p>
        <span className="told">“{promise.words}”</span> {who ?? "Somebody"}
        {of ? `, of ${of}` : ""}, <span className={late ? "waits" : undefined}>{due}</span>
        {promise.keptOn === null ? "." : `; kept ${dateInWords(promise.keptOn)}.`}
      </p>
      {refusals.length > 0 ? (
        <Notice kind="waiting" title="Nothing was stored yet">
          {refusals.map((refusal) => (
            <p key={refusal.sentence}>{refusalSentence(refusal)}</p>
          ))}
        </Notice>
      ) : null}
      {promise.keptOn === null && !looksOnly ? (
        <div className={`${styles.deeds} not-on-paper`}>
          <AskTwice
            button="It was kept"
            title="It was kept?"
            says={<p>“{promise.words}”</p>}
            confirm="Write it down"
            kind="entry"
            action={sendKept}
          >
            <DateField name="on" id={`kept-${promise.id}`} label="When" value={today} required />
          </AskTwice>
          <AskTwice
            button="Let it go"
            buttonKind="quiet"
            title="Let the promise go?"
            says={
              <p>
                “{promise.words}” Nobody is held to bring seed back. Its words stay, with your reason; a loan becomes a
                gift.
              </p>
            }
            confirm="Let it go"
            kind="entry"
            action={sendGone}
          >
            <TextField name="reason" id={`reason-${promise.id}`} label="Why" required />
          </AskTwice>
        </div>
      ) : null}
    </div>
  );
}

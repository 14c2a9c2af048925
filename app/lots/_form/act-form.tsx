"use client";

import Link from "next/link";
import { type ReactNode, useEffect, useRef, useState } from "react";
import { DraftLine } from "@/components/drafts";
import { AskTwice, FormRefusals } from "@/components/ui";
import { refusalsForSummary } from "@/lib/display/refusals";
import { type FormDeed, textsOf } from "./form-answer";
import styles from "./lot-form.module.css";
import { type FieldOf, useFormAnswer } from "./use-form-answer";

type Texts = Readonly<Record<string, string>>;

/** What the parts of such a form are drawn from. */
export interface ActFormParts {
  readonly field: FieldOf;
  /** what stands in the fields now, at every stroke of a key */
  readonly values: Texts;
  /** writes into fields; what stands in others stays */
  readonly fill: (texts: Texts) => void;
}

/**
 * A form for an act in the jar: what it would do is shown while it is typed, and it is asked twice, since no history puts seed back. Keeps
 * what is typed on the device, and gives refusals back to their fields. `question` says in words what will be done.
 */
export function ActForm({
  draft,
  deed,
  start,
  labels,
  question,
  back,
  standing = "Seed that was moved stays moved: nothing here unmixes a jar.",
  children,
}: {
  draft: string;
  deed: FormDeed;
  start: Texts;
  labels: Texts;
  /** `kind`: an act unless told; a finding that only changes the records is an entry */
  question: (values: Texts) => {
    button: string;
    title: string;
    says: ReactNode;
    confirm: string;
    ready: boolean;
    kind?: "entry" | "act";
  };
  back: string;
  /** what nothing takes back */
  standing?: string;
  children: (parts: ActFormParts) => ReactNode;
}) {
  const { answer, send, sending, typed, field, keep, kept, restored, again } = useFormAnswer(draft, deed, start);
  const form = useRef<HTMLFormElement>(null);
  const [live, setLive] = useState<Texts | null>(null);
  const [filled, setFilled] = useState<{ readonly texts: Texts; readonly times: number } | null>(null);
  useEffect(() => {
    // What was typed before the page had woken counts; what was typed another time, and stands here again, comes after it.
    setLive(restored || form.current === null ? null : textsNow(form.current));
  }, [restored]);
  if (answer.done !== null) {
    return (
      <p role="status">
        It is stored. <Link href={answer.done}>Go on</Link>
      </p>
    );
  }
  const values = live ?? typed;
  const fill = (texts: Texts) => {
    const next = { ...values, ...texts };
    setFilled((before) => ({ texts: next, times: (before?.times ?? 0) + 1 }));
    setLive(next);
    // Kept once the fields are drawn anew with what was written into them.
    setTimeout(() => form.current && keep(form.current));
  };
  const shown: FieldOf = (name) => ({ ...field(name), value: (filled?.texts ?? typed)[name] ?? "" });
  const read = (from: HTMLFormElement) => {
    setLive(textsNow(from));
    keep(from);
  };
  const startAgain = () => {
    setLive(null);
    setFilled(null);
    again();
  };
  const { ready, kind = "act", ...asked } = question(values);
  return (
    <div className={styles.form}>
      <FormRefusals refusals={refusalsForSummary(answer.refusals, labels)} />
      <form
        ref={form}
        className={styles.form}
        onInput={(event) => read(event.currentTarget)}
        onSubmit={(event) => event.preventDefault()}
        noValidate
      >
        <div key={`${restored} ${filled?.times ?? 0}`} className={styles.fields}>
          {children({ field: shown, values, fill })}
        </div>
      </form>
      <p className={styles.standing}>
        {standing} The record of it can be taken back in History, where it was written by mistake.
      </p>
      <div className="row">
        {ready && !sending ? (
          <AskTwice buttonKind="chief" kind={kind} action={send} {...asked}>
            {Object.entries(values).map(([name, value]) => (
              <input key={name} type="hidden" name={name} value={value} />
            ))}
          </AskTwice>
        ) : null}
        <Link className="not-on-paper" href={back}>
          Leave it
        </Link>
      </div>
      <DraftLine kept={kept} restored={restored} again={startAgain} />
    </div>
  );
}

/** What stands in a form, with a word for each box that is not ticked. */
function textsNow(form: HTMLFormElement): Texts {
  const open: Record<string, string> = {};
  for (const box of form.querySelectorAll<HTMLInputElement>("input[type=checkbox][name]")) open[box.name] = "";
  return { ...open, ...textsOf(new FormData(form)) };
}

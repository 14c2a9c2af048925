"use client";

import Link from "next/link";
import { useRouter } from "next/navigation";
import { type ReactNode, useActionState, useEffect, useRef, useState } from "react";
import { DraftLine, textsStored, useDraft } from "@/components/drafts";
import { Button, FormRefusals, Notice } from "@/components/ui";
import { refusalsByField, refusalsForSummary } from "@/lib/display/refusals";
import { textsOf } from "../../lots/_form/form-answer";
import type { FieldOf } from "../../lots/_form/lot-form";
import styles from "./evening-form.module.css";
import type { FieldAnswer, FieldDeed } from "./field-answer";

type Texts = Readonly<Record<string, string>>;

/**
 * A form for an evening at the desk: typed in from paper, written down, and empty again for the next entry. What is typed is kept on the
 * device; refusals come back to their fields; warnings stand over the form, and what they are about is stored all the same. `beside` is drawn
 * anew with each key from what stands in the form. With `leadsTo` it is left once it is stored, as a correction is.
 */
export function EveningForm({
  draft: draftKey,
  deed,
  start,
  labels,
  submit,
  back,
  leadsTo,
  standing,
  beside,
  children,
}: {
  draft: string;
  deed: FieldDeed;
  start: Texts;
  labels: Texts;
  submit: string;
  back: string;
  leadsTo?: string;
  standing: ReactNode;
  beside?: (typed: Texts) => ReactNode;
  children: (field: FieldOf, typed: Texts) => ReactNode;
}) {
  const router = useRouter();
  const form = useRef<HTMLFormElement>(null);
  const draft = useDraft(draftKey, textsStored);
  const [answer, send, sending] = useActionState<FieldAnswer, FormData>(deed, {
    typed: {},
    refusals: [],
    written: null,
  });
  // What the fields begin with, and a mark that draws them anew.
  const [base, setBase] = useState<{ texts: Texts; mark: number; restored: boolean }>({
    texts: start,
    mark: 0,
    restored: false,
  });
  const [typed, setTyped] = useState<Texts>(start);
  const { found, forget, keep, kept } = draft;
  const begin = (texts: Texts, restored: boolean) => {
    setBase(({ mark }) => ({ texts, mark: mark + 1, restored }));
    setTyped(texts);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: what lay on the device is taken up once
  useEffect(() => {
    if (found?.draft) begin(found.draft, true);
  }, [found]);
  useEffect(() => {
    // What was typed before the page came to life counts, too.
    if (form.current) setTyped(textsOf(new FormData(form.current)));
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: an answer is dealt with once
  useEffect(() => {
    if (answer.written === null) return;
    forget();
    if (leadsTo) router.push(leadsTo);
    else begin(start, false);
    router.refresh();
  }, [answer]);
  const again = useRef(0);
  useEffect(() => {
    // After an entry the hand goes on with the next one.
    if (answer.written === null || leadsTo || again.current === base.mark) return;
    again.current = base.mark;
    form.current?.querySelector<HTMLElement>("input:not([type=hidden]), select, textarea")?.focus();
  }, [answer, base.mark, leadsTo]);
  const byField = refusalsByField(answer.refusals);
  const refused = answer.refusals.length > 0;
  const field: FieldOf = (name) => ({
    name,
    value: (refused ? answer.typed[name] : base.texts[name]) ?? "",
    refusals: byField[name] ?? [],
  });
  return (
    <>
      {answer.written ? <Written written={answer.written} back={back} /> : null}
      <form
        ref={form}
        action={send}
        className={styles.form}
        noValidate
        onInput={(event) => {
          const texts = textsOf(new FormData(event.currentTarget));
          setTyped(texts);
          keep(texts);
        }}
      >
        <div className={styles.fields} key={base.mark}>
          <FormRefusals refusals={refusalsForSummary(answer.refusals, labels)} />
          {children(field, typed)}
        </div>
        {beside ? <div className={styles.beside}>{beside(typed)}</div> : null}
        <div className={styles.foot}>
          <p className={styles.standing}>{standing}</p>
          <div className="row">
            <Button type="submit" kind="chief" disabled={sending}>
              {submit}
            </Button>
            <Link className="not-on-paper" href={back}>
              {answer.written ? "Back to the grow-out" : "Leave it"}
            </Link>
          </div>
          <DraftLine
            kept={kept}
            restored={base.restored}
            again={() => {
              forget();
              begin(start, false);
            }}
          />
        </div>
      </form>
    </>
  );
}

/** What was written down just now, and what looks odd about it. */
function Written({ written, back }: { written: NonNullable<FieldAnswer["written"]>; back: string }) {
  return (
    <div role="status">
      <Notice
        kind={written.warnings.length > 0 ? "waiting" : "plain"}
        title={`Written down: ${written.said}`}
        actions={<Link href={back}>See it on the grow-out</Link>}
      >
        {[...new Set(written.warnings)].map((warning) => (
          <p key={warning}>{warning}</p>
        ))}
      </Notice>
    </div>
  );
}

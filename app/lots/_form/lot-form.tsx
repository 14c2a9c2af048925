"use client";

import Link from "next/link";
import type { ReactNode } from "react";
import { DraftLine } from "@/components/drafts";
import { Button, FormRefusals } from "@/components/ui";
import { refusalsForSummary } from "@/lib/display/refusals";
import { stoodAs, stoodField } from "@/lib/schemas/written-meanwhile";
import type { FormDeed } from "./form-answer";
import styles from "./lot-form.module.css";
import { type FieldOf, useFormAnswer } from "./use-form-answer";

export type { FieldOf } from "./use-form-answer";

/**
 * A form about a lot: keeps what is typed on the device, gives refusals back to their fields with what was typed, and leads on when it is
 * done. `standing` says whether what is done here can be taken back.
 */
export function LotForm({
  draft: draftKey,
  deed,
  start,
  labels,
  submit,
  back,
  standing,
  corrects = false,
  children,
}: {
  draft: string;
  deed: FormDeed;
  start: Readonly<Record<string, string>>;
  labels: Readonly<Record<string, string>>;
  submit: string;
  /** where one goes without storing anything */
  back: string;
  standing: ReactNode;
  /** it changes what is written: then it says what stood there when it was opened, so that nothing written meanwhile is lost */
  corrects?: boolean;
  children: (field: FieldOf) => ReactNode;
}) {
  const { answer, send, sending, field, keep, kept, restored, again } = useFormAnswer(draftKey, deed, start);
  if (answer.done !== null) {
    return (
      <p role="status">
        It is stored. <Link href={answer.done}>Go on</Link>
      </p>
    );
  }
  return (
    <form action={send} onInput={(event) => keep(event.currentTarget)} className={styles.form} noValidate>
      <FormRefusals refusals={refusalsForSummary(answer.refusals, labels)} />
      <div key={restored ? "restored" : "begun"} className={styles.fields}>
        {children(field)}
        {corrects ? <input type="hidden" name={stoodField} value={field(stoodField).value || stoodAs(start)} /> : null}
      </div>
      <p className={styles.standing}>{standing}</p>
      <div className="row">
        <Button type="submit" kind="chief" disabled={sending}>
          {submit}
        </Button>
        <Link className="not-on-paper" href={back}>
          Leave it
        </Link>
      </div>
      <DraftLine kept={kept} restored={restored} again={again} />
    </form>
  );
}

/** Some fields under one name. */
export function FieldGroup({ title, children }: { title: string; children: ReactNode }) {
  return (
    <fieldset className={styles.group}>
      <legend>{title}</legend>
      {children}
    </fieldset>
  );
}

/** Fields that stand side by side where there is room. */
export function SideBySide({ children }: { children: ReactNode }) {
  return <div className={styles.beside}>{children}</div>;
}

/** Fields that are seldom needed, folded until asked for; `open` where one of them was refused. */
export function Seldom({ title, open, children }: { title: string; open: boolean; children: ReactNode }) {
  return (
    <details className={styles.seldom} open={open}>
      <summary>{title}</summary>
      <div className={styles.fields}>{children}</div>
    </details>
  );
}

"use client";

import Link from "next/link";
import { useRouter } from "next/navigation";
import { type FormEvent, type ReactNode, useActionState, useEffect, useState } from "react";
import { DraftLine, useDraft } from "@/components/drafts";
import { Button, FormRefusals } from "@/components/ui";
import { refusalsByField, refusalsForSummary } from "@/lib/display/refusals";
import { type FormDeed, textsOf } from "./form-answer";
import styles from "./lot-form.module.css";

/** What a field needs of the form: its name, what stands in it, and why that was refused. */
export type FieldOf = (name: string) => { name: string; value: string; refusals: readonly string[] };

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
  children: (field: FieldOf) => ReactNode;
}) {
  const router = useRouter();
  const draft = useDraft(draftKey, textsStored);
  const [answer, send, sending] = useActionState(deed, { typed: start, refusals: [], done: null });
  const [restored, setRestored] = useState<Readonly<Record<string, string>> | null>(null);
  const { found, forget } = draft;
  useEffect(() => {
    if (found?.draft) setRestored(found.draft);
  }, [found]);
  useEffect(() => {
    if (answer.done === null) return;
    forget();
    router.push(answer.done);
    // What other pages hold of it is read anew; done here, for a page that is drawn anew meanwhile would lose the way.
    router.refresh();
  }, [answer.done, forget, router]);
  // Once the server has answered, its copy of what was typed leads.
  const typed = answer.refusals.length > 0 ? answer.typed : (restored ?? start);
  const byField = refusalsByField(answer.refusals);
  const field: FieldOf = (name) => ({ name, value: typed[name] ?? "", refusals: byField[name] ?? [] });
  const keep = (event: FormEvent<HTMLFormElement>) => draft.keep(textsOf(new FormData(event.currentTarget)));
  const again = () => {
    forget();
    setRestored(null);
  };
  if (answer.done !== null) {
    return (
      <p role="status">
        It is stored. <Link href={answer.done}>Go on</Link>
      </p>
    );
  }
  return (
    <form action={send} onInput={keep} className={styles.form} noValidate>
      <FormRefusals refusals={refusalsForSummary(answer.refusals, labels)} />
      <div key={restored === null ? "begun" : "restored"} className={styles.fields}>
        {children(field)}
      </div>
      <p className={styles.standing}>{standing}</p>
      <div className="row">
        <Button type="submit" kind="chief" disabled={sending}>
          {submit}
        </Button>
        <Link href={back}>Leave it</Link>
      </div>
      <DraftLine kept={draft.kept} restored={restored !== null} again={again} />
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

function textsStored(stored: unknown): Record<string, string> | null {
  if (typeof stored !== "object" || stored === null) return null;
  const texts = Object.entries(stored).filter((each): each is [string, string] => typeof each[1] === "string");
  return Object.fromEntries(texts);
}

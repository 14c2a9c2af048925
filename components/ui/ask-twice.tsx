"use client";

import { type ReactNode, useId, useRef } from "react";
import styles from "./ask-twice.module.css";
import { Button, type ButtonKind } from "./button";

const standing = {
  entry: "This is an entry in the records: History can take it back.",
  act: "This is an act with the seed itself: nothing here can take it back. Only a record that was written by mistake can be, in History.",
  forgetting: "This is for good: nothing here brings it back.",
  phone: "It is stored on this phone, and goes into the registry by itself; there History can take it back.",
  people: "This is about who may come in: it touches no record, and is changed on this page alone.",
} as const;

/**
 * Asked twice: a button that first opens a dialog saying what will be done, with the form that does it inside.
 * `kind` says which of the two it is: an "entry" in the records, which History can take back, or an "act" in the jar,
 * which nothing takes back, "phone": an entry that the phone keeps first, or "people": about who may come in. It holds a form of its own, so it never stands inside another. `children` may hold hidden fields and fields (a reason).
 */
export function AskTwice({
  button,
  buttonKind = "plain",
  title,
  says,
  confirm,
  leave = "Leave it as it is",
  kind,
  action,
  children,
}: {
  button: ReactNode;
  buttonKind?: ButtonKind;
  title: string;
  says?: ReactNode;
  confirm: string;
  leave?: string;
  kind: "entry" | "act" | "forgetting" | "phone" | "people";
  action: string | ((form: FormData) => void | Promise<void>);
  children?: ReactNode;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  return (
    <>
      <Button kind={buttonKind} onClick={() => dialog.current?.showModal()} aria-haspopup="dialog">
        {button}
      </Button>
      <dialog className={styles.dialog} ref={dialog} aria-labelledby={titleId}>
        <form action={action} onSubmit={() => dialog.current?.close()} className={styles.form}>
          <h2 id={titleId}>{title}</h2>
          {says ? <div>{says}</div> : null}
          <p className={styles.standing}>{standing[kind]}</p>
          {children}
          <div className={styles.actions}>
            <Button type="submit" kind={kind === "act" || kind === "forgetting" ? "waiting" : "chief"}>
              {confirm}
            </Button>
            <Button onClick={() => dialog.current?.close()}>{leave}</Button>
          </div>
        </form>
      </dialog>
    </>
  );
}

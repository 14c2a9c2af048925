"use client";

import { useActionState, useState } from "react";
import { Button, FormRefusals, TextField, Tick } from "@/components/ui";
import { type FormAnswer, unanswered } from "../../varieties/_forms/field-spec";
import styles from "./account-form.module.css";

/** A field of a form about an account. `secret`: what is typed is hidden, unless it is asked for, and never comes back. */
export interface AccountField {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly secret?: boolean;
  /** what a keeper of passphrases is to put in */
  readonly autoComplete: "username" | "current-password" | "new-password" | "name" | "off";
}

/** A form about an account: names and passphrases over one action. Nothing of it is kept as a draft. */
export function AccountForm({
  fields,
  action,
  confirm,
  sending,
  tick,
}: {
  fields: readonly AccountField[];
  action: (before: FormAnswer, form: FormData) => Promise<FormAnswer>;
  confirm: string;
  /** the button's words while it is sent */
  sending: string;
  tick?: { readonly name: string; readonly label: string; readonly note?: string };
}) {
  const [answer, send, busy] = useActionState(action, unanswered);
  const [shown, show] = useState(false);
  const labels = Object.fromEntries(fields.map((field) => [field.name, field.label]));
  return (
    <form action={send} className={styles.form} noValidate data-not-kept>
      <FormRefusals
        title="Not yet"
        refusals={answer.refusals.map(({ field, sentence }) =>
          field in labels ? { sentence, name: field, label: labels[field] } : { sentence },
        )}
      />
      {fields.map((field) => (
        <TextField
          key={field.name}
          name={field.name}
          label={field.label}
          hint={field.hint}
          type={field.secret && !shown ? "password" : "text"}
          autoComplete={field.autoComplete}
          value={field.secret ? null : answer.typed[field.name]}
          refusals={answer.refusals.filter((each) => each.field === field.name).map((each) => each.sentence)}
          required
        />
      ))}
      <label className={styles.show}>
        <input type="checkbox" checked={shown} onChange={(event) => show(event.target.checked)} />
        <span>Show what I type</span>
      </label>
      {tick ? <Tick {...tick} checked={answer.typed[tick.name] === "yes"} /> : null}
      <div>
        <Button type="submit" kind="chief" disabled={busy}>
          {busy ? sending : confirm}
        </Button>
      </div>
    </form>
  );
}

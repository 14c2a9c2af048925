"use client";

import { useActionState } from "react";
import { Button, ButtonLink, FormRefusals } from "@/components/ui";
import { stoodAs, stoodField } from "@/lib/schemas/written-meanwhile";
import { type FieldSpec, type FormAnswer, textsOfFields, unanswered } from "./field-spec";
import { FormField } from "./form-field";
import styles from "./record-form.module.css";

/**
 * A form of a few fields over a server action. What was typed stays when the action refuses; each refusal stands at its field and in the
 * summary at the head. The action leads on by itself where it accepts.
 */
export function RecordForm({
  fields,
  action,
  confirm,
  back,
  corrects = false,
}: {
  fields: readonly FieldSpec[];
  action: (before: FormAnswer, form: FormData) => Promise<FormAnswer>;
  confirm: string;
  /** where to go without storing anything */
  back: { href: string; words: string };
  /** it changes what is written: then it says what stood there when it was opened, so that nothing written meanwhile is lost */
  corrects?: boolean;
}) {
  const [answer, send, storing] = useActionState(action, unanswered);
  const labels = Object.fromEntries(
    fields.flatMap((field) => (field.kind === "hidden" ? [] : [[field.name, field.label]])),
  );
  return (
    <form action={send} className={styles.form} noValidate>
      <FormRefusals
        refusals={answer.refusals.map(({ field, sentence }) =>
          field in labels ? { sentence, name: field, label: labels[field] } : { sentence },
        )}
      />
      {fields.map((field) => (
        <FormField
          key={field.name}
          field={field}
          typed={answer.typed[field.name]}
          answered={answer !== unanswered}
          refusals={answer.refusals.filter((each) => each.field === field.name).map((each) => each.sentence)}
        />
      ))}
      {corrects ? (
        <input type="hidden" name={stoodField} value={answer.typed[stoodField] ?? stoodAs(textsOfFields(fields))} />
      ) : null}
      <div className={styles.actions}>
        <Button type="submit" kind="chief" disabled={storing}>
          {storing ? "Storing" : confirm}
        </Button>
        <ButtonLink href={back.href} kind="quiet">
          {back.words}
        </ButtonLink>
      </div>
    </form>
  );
}

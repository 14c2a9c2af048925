"use client";

import { useActionState, useState } from "react";
import { Button, Choice, FormRefusals, Select, TextField, Tick } from "@/components/ui";
import type { MemberRole } from "@/lib/schemas/accounts/member-roles";
import { memberRoles } from "@/lib/schemas/accounts/member-roles";
import { roleNames, roleNotes } from "../_words/roles";
import styles from "./membership-form.module.css";
import { noWayInYet, WayIn, type WayInAnswer } from "./way-in-shown";

interface Named {
  readonly id: string;
  readonly name: string;
}

/** What stands already: of a new invitation nothing. */
export interface MembershipNow {
  readonly role: MemberRole | null;
  readonly stewardId: string | null;
  readonly growOuts: readonly string[];
  readonly words: string | null;
}

const labels = { role: "What the person is here", stewardId: "Keeps seed for", growOuts: "Writes for" };

/** What somebody may do here: the role, the steward for whom they keep seed, and for a helper the grow-outs. */
export function MembershipForm({
  now,
  stewards,
  growOuts,
  action,
  confirm,
  note,
}: {
  now: MembershipNow;
  stewards: readonly Named[];
  growOuts: readonly Named[];
  action: (before: WayInAnswer, form: FormData) => Promise<WayInAnswer>;
  confirm: string;
  /** the field of free words: its name and label */
  note: { readonly name: "words" | "note"; readonly label: string; readonly hint: string };
}) {
  const [answer, send, busy] = useActionState(action, noWayInYet);
  const typed = answer.typed;
  const [role, choose] = useState<string>(now.role ?? "");
  const refusalsOf = (name: string) =>
    answer.refusals.filter((each) => each.field === name).map((each) => each.sentence);
  if (answer.shown) return <WayIn shown={answer.shown} whatFor="The invitation stands" />;
  const chosen = typed.growOuts === undefined ? now.growOuts : typed.growOuts.split(" ");
  return (
    <form action={send} className={styles.form} noValidate>
      <FormRefusals
        refusals={answer.refusals.map(({ field, sentence }) =>
          field in labels ? { sentence, name: field, label: labels[field as keyof typeof labels] } : { sentence },
        )}
      />
      {/* a change of any of the boxes comes up to here */}
      <div onChange={(event) => choose(chosenRole(event.target) ?? role)}>
        <Choice
          name="role"
          label={labels.role}
          value={typed.role ?? now.role}
          options={memberRoles.map((each) => ({ value: each, words: roleNames[each], note: roleNotes[each] }))}
          refusals={refusalsOf("role")}
          required
        />
      </div>
      {stewards.length > 0 || role === "steward" ? (
        <Select
          name="stewardId"
          label={labels.stewardId}
          hint="The steward’s record; an account may act for one"
          value={typed.stewardId ?? now.stewardId}
          empty="nobody"
          options={stewards.map((each) => ({ value: each.id, words: each.name }))}
          refusals={refusalsOf("stewardId")}
          required={role === "steward"}
        />
      ) : null}
      {role === "helper" ? (
        <fieldset className={styles.growOuts} id="field-growOuts" tabIndex={-1}>
          <legend>{labels.growOuts}</legend>
          {growOuts.length === 0 ? <p className="quiet">There is no grow-out on record yet.</p> : null}
          {growOuts.map((each) => (
            <Tick key={each.id} name="growOuts" value={each.id} label={each.name} checked={chosen.includes(each.id)} />
          ))}
          {refusalsOf("growOuts").map((sentence) => (
            <p key={sentence} className="waits">
              {sentence}
            </p>
          ))}
        </fieldset>
      ) : null}
      <TextField name={note.name} label={note.label} hint={note.hint} value={typed[note.name] ?? now.words} />
      <div>
        <Button type="submit" kind="chief" disabled={busy}>
          {busy ? "Storing" : confirm}
        </Button>
      </div>
    </form>
  );
}

function chosenRole(target: EventTarget): string | null {
  return target instanceof HTMLInputElement && target.name === "role" ? target.value : null;
}

"use client";

import { DateField, TextField } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { sheetField } from "@/lib/schemas/grow-outs/field-counts";
import { type Moment, moments, type Organ } from "@/lib/schemas/grow-outs/field-kinds";
import { writeFlowering } from "../../_actions/field";
import { EveningForm } from "../../_field/evening-form";
import { type Person, Who } from "../../_field/who";
import { momentWords, organWords, whenSeen } from "../../_words/field-words";
import styles from "./flowering-form.module.css";

/** A note that stands. */
export interface StandingNote {
  readonly id: string;
  readonly on: string | null;
}

/** An organ and what is noted of it. */
export interface OrganRow {
  readonly organ: Organ;
  readonly noted: Readonly<Partial<Record<Moment, StandingNote>>>;
}

/** The sheet of flowering: first, half and last of each organ; what is noted stands, and can be put right. */
export function FloweringForm({
  growOutId,
  rows,
  people,
  by,
}: {
  growOutId: string;
  rows: readonly OrganRow[];
  people: readonly Person[];
  by: string;
}) {
  return (
    <EveningForm
      draft={`grow-out:${growOutId}:flowering`}
      deed={writeFlowering.bind(null, growOutId)}
      start={{ by }}
      labels={labelsOf(rows)}
      submit="Write it down"
      back={`/grow-outs/${growOutId}#counts`}
      standing="A mistaken note can be put right or taken back."
    >
      {(field) => (
        <>
          {rows.map(({ organ, noted }) => (
            <fieldset key={organ} className={styles.organ}>
              <legend>{organWords[organ]}</legend>
              {moments.map((moment) => {
                const note = noted[moment];
                const label = labelOf(organ, moment);
                if (!note)
                  return <DateField key={moment} {...field(sheetField(organ, moment))} label={label} hint="" />;
                return (
                  <p key={moment} className={styles.noted}>
                    <b>{label}</b>
                    <span>{whenSeen(note.on)}</span>
                    <Way href={`/grow-outs/${growOutId}/flowering/${note.id}`}>Put it right</Way>
                  </p>
                );
              })}
            </fieldset>
          ))}
          <TextField {...field("note")} label="Note" />
          <Who field={field} people={people} label="Who looked" />
        </>
      )}
    </EveningForm>
  );
}

const firstWords: Readonly<Record<Organ, Readonly<Record<Moment, string>>>> = {
  flower: { first: "First flower", half: "Half in flower", last: "Last flower" },
  pollen: { first: "First pollen", half: "Half shed", last: "Last pollen" },
  silk: { first: "First silk", half: "Half in silk", last: "Last silk" },
};

function labelOf(organ: Organ, moment: Moment): string {
  return firstWords[organ][moment] ?? momentWords[moment];
}

function labelsOf(rows: readonly OrganRow[]): Record<string, string> {
  const labels = rows.flatMap(({ organ }) =>
    moments.map((moment) => [sheetField(organ, moment), labelOf(organ, moment)]),
  );
  return { ...Object.fromEntries(labels), by: "Who looked" };
}

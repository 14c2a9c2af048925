"use client";

import { DateField, NumberField, Select, TextField } from "@/components/ui";
import { groundWith } from "@/lib/registry/grow-outs/size-if";
import type { SizeGround } from "@/lib/registry/grow-outs/size-so-far";
import { sheetField } from "@/lib/schemas/grow-outs/field-counts";
import type { Stage } from "@/lib/schemas/grow-outs/field-kinds";
import type { FieldOf } from "../../../lots/_form/lot-form";
import { writeCounts } from "../../_actions/field";
import { EveningForm } from "../../_field/evening-form";
import { LiveSize } from "../../_field/live-size";
import { typedCounts } from "../../_field/typed-events";
import { type Person, Who } from "../../_field/who";
import { stageWords, thinningOptions } from "../../_words/field-words";
import styles from "./count-form.module.css";

/** A row of the sheet: a stage, and what stands on record of it. */
export interface StageRow {
  readonly stage: Stage;
  /** "84, 20 June 2026" */
  readonly onRecord: string | null;
}

/** The sheet of counts: a row a stage, any of which may stay empty. */
export function CountForm({
  growOutId,
  rows,
  separate,
  people,
  by,
  ground,
}: {
  growOutId: string;
  rows: readonly StageRow[];
  separate: boolean;
  people: readonly Person[];
  by: string;
  ground: SizeGround;
}) {
  return (
    <EveningForm
      draft={`grow-out:${growOutId}:counts`}
      deed={writeCounts.bind(null, growOutId)}
      start={{ by }}
      labels={labelsOf(rows)}
      submit="Write the counts down"
      back={`/grow-outs/${growOutId}#counts`}
      standing="A mistaken count can be put right or taken back."
      beside={(typed) => <LiveSize ground={groundWith(ground, { counts: typedCounts(typed) })} />}
    >
      {(field) => (
        <>
          <p className="quiet measure">
            The day in the field, not the day of typing: 2026-06-20, 2026-06, or about: 2026-06~. Rows left empty are
            not written.
          </p>
          <div className={styles.sheet}>
            {rows.map((row) => (
              <StageFields key={row.stage} row={row} field={field} separate={separate} />
            ))}
          </div>
          <Who field={field} people={people} label="Who counted" />
        </>
      )}
    </EveningForm>
  );
}

function StageFields({
  row: { stage, onRecord },
  field,
  separate,
}: {
  row: StageRow;
  field: FieldOf;
  separate: boolean;
}) {
  const of = (name: string) => field(sheetField(stage, name));
  return (
    <fieldset className={styles.row}>
      <legend className={styles.stage}>{stageWords[stage].name}</legend>
      <p className={styles.meant}>
        {stageWords[stage].meant}
        {onRecord ? <span className={styles.record}> On record: {onRecord}</span> : null}
      </p>
      <div className={styles.cells}>
        <NumberField {...of("plants")} label={stage === "sown" ? "Seeds" : "Plants"} whole />
        {separate && stage !== "sown" ? <NumberField {...of("males")} label="Males" whole /> : null}
        <DateField {...of("on")} label="On" hint="" />
        {stage === "thinned" ? (
          <Select {...of("thinnedBy")} label="Thinned" options={thinningOptions} empty="not written" />
        ) : null}
        <TextField {...of("note")} label="Note" />
      </div>
    </fieldset>
  );
}

function labelsOf(rows: readonly StageRow[]): Record<string, string> {
  const cells = { plants: "plants", males: "males", on: "on", thinnedBy: "thinned", note: "note" };
  const labels = rows.flatMap(({ stage }) =>
    Object.entries(cells).map(([cell, words]) => [sheetField(stage, cell), `${stageWords[stage].name}, ${words}`]),
  );
  return { ...Object.fromEntries(labels), by: "Who counted" };
}

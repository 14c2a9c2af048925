"use client";

import { Choice, DateField, NumberField, type Option, Select, TextField } from "@/components/ui";
import { FieldGroup, LotForm, SideBySide } from "../../../../lots/_form/lot-form";
import { addThesePlants } from "./add-these-plants";

const labels = {
  tag: "One plant",
  letters: "Letters before the number",
  from: "From",
  to: "To",
  cell: "Cell",
  perCell: "Plants in a cell",
  intent: "Intent",
  on: "When",
  words: "Words",
  steward: "By whom",
};

const intents = [
  { value: "", words: "None yet", note: "the plants are numbered, and marked later" },
  { value: "keep", words: "Keep", note: "seed is to be kept of it" },
  { value: "watch", words: "Watch", note: "to be looked at again" },
  { value: "pull", words: "Pull", note: "to be rogued" },
];

/** One plant by its tag, or a run of numbers. */
export function AddPlantsForm({
  growOutId,
  start,
  people,
}: {
  growOutId: string;
  start: Readonly<Record<string, string>>;
  people: readonly Option[];
}) {
  return (
    <LotForm
      draft={`plants-add:${growOutId}`}
      deed={addThesePlants.bind(null, growOutId)}
      start={start}
      labels={labels}
      submit="Add the plants"
      back={`/grow-outs/${growOutId}/plants`}
      standing="This is an entry in the records: History can take it back."
    >
      {(field) => (
        <>
          <FieldGroup title="A run of numbers">
            <SideBySide>
              <NumberField {...field("from")} label={labels.from} whole />
              <NumberField {...field("to")} label={labels.to} whole />
              <TextField {...field("letters")} label={labels.letters} hint="as R for R1, R2, R3" />
            </SideBySide>
          </FieldGroup>
          <FieldGroup title="Or one plant">
            <TextField {...field("tag")} label="Its tag" hint="then leave the run above empty" />
          </FieldGroup>
          <FieldGroup title="Where they stand">
            <SideBySide>
              <TextField
                {...field("cell")}
                label={labels.cell}
                hint="a part of the plot with one soil; plants are compared within it"
              />
              <NumberField
                {...field("perCell")}
                label={labels.perCell}
                hint="20 to 40 is usual; the cells then count up: A, B, C"
                whole
              />
            </SideBySide>
          </FieldGroup>
          <Choice {...field("intent")} label={labels.intent} options={intents} />
          <SideBySide>
            <DateField {...field("on")} label={labels.on} required />
            <Select {...field("steward")} label={labels.steward} options={people} empty="not said" />
          </SideBySide>
          <TextField {...field("words")} label={labels.words} hint="early, two ears, stood in the gale" lines={2} />
        </>
      )}
    </LotForm>
  );
}

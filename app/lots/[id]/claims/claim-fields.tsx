"use client";

import { Choice, DateField, NumberField, Select, TextField } from "@/components/ui";
import { type FieldOf, SideBySide } from "../../_form/lot-form";
import { claimKindOptions, surenessOptions } from "../../_words/claim-words";

/** What the fields of a claim are called, for the list of what was refused. */
export const claimLabels: Readonly<Record<string, string>> = {
  kind: "What is said",
  parent: "The other lot",
  generationsFirst: "Generations between, at least",
  generationsLast: "Generations between, at most",
  words: "In the teller’s words",
  teller: "Who told it",
  toldOn: "When it was told",
  howSure: "How sure",
  story: "The whole story",
};

/** The fields of what is told of where a lot is from. */
export function ClaimFields({ field, founder }: { field: FieldOf; founder: boolean }) {
  const options = claimKindOptions.filter(({ value }) => founder || value !== "unknown before");
  return (
    <>
      <Choice {...field("kind")} label="What is said" options={options} required />
      <TextField
        {...field("parent")}
        label="The other lot"
        hint="its number here; left empty where it is not on record or nothing is known"
      />
      <SideBySide>
        <NumberField {...field("generationsFirst")} label="Grow-outs between, at least" whole />
        <NumberField {...field("generationsLast")} label="at most" whole />
      </SideBySide>
      <TextField {...field("words")} label="In the teller’s words" lines={3} required />
      <SideBySide>
        <TextField {...field("teller")} label="Who told it" />
        <DateField {...field("toldOn")} label="When it was told" />
      </SideBySide>
      <Select {...field("howSure")} label="How sure" options={surenessOptions} empty="not written" />
      <TextField
        {...field("story")}
        label="The whole story"
        hint="where there is more to it: it is kept as a story of the lot"
        lines={4}
      />
    </>
  );
}

"use client";

import { Choice, NumberField, TextField } from "@/components/ui";
import { FieldGroup, LotForm, SideBySide } from "../../../lots/_form/lot-form";
import { sayForeignPollen } from "../../_actions/foreign-pollen";
import { findingOptions } from "../../_words/pollen-words";

/** How much of the seed had a foreign father, told or counted, and how it was found. */
export function ForeignPollenForm({ growOutId, replaces }: { growOutId: string; replaces: boolean }) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:foreign-pollen`}
      deed={sayForeignPollen.bind(null, growOutId)}
      start={{}}
      labels={{
        finding: "How it was found",
        sampled: "Looked at",
        found: "Showed it",
        carrying: "Share of that pollen that carries the mark",
        percent: "Share of the seed",
        words: "In words",
        why: "Why it is replaced",
      }}
      submit="Write it down"
      back={`/grow-outs/${growOutId}#how`}
      standing="The figures of all that descends from it follow. It can be put right; what stood there before stays in the history."
    >
      {(field) => (
        <>
          <Choice {...field("finding")} label="How it was found" options={findingOptions} required />
          <FieldGroup title="What was counted">
            <SideBySide>
              <NumberField {...field("sampled")} label="Seeds or seedlings looked at" whole />
              <NumberField {...field("found")} label="of which showed it" whole />
            </SideBySide>
            <NumberField
              {...field("carrying")}
              label="Share of that pollen that carries the mark"
              unit="%"
              hint="left empty: all of it, as from a uniform neighbour"
            />
          </FieldGroup>
          <NumberField
            {...field("percent")}
            label="Or: share of the seed with a foreign father"
            unit="%"
            hint="0 where it was looked for and none found"
          />
          <TextField {...field("words")} label="In words" hint="which neighbour, which edge, which colour" lines={2} />
          {replaces ? (
            <TextField {...field("why")} label="Why what stands there is replaced" lines={2} required />
          ) : null}
        </>
      )}
    </LotForm>
  );
}

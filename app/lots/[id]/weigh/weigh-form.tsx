"use client";

import { DateField, NumberField, TextField } from "@/components/ui";
import { portionsAtOnce } from "@/lib/schemas/ledger/seed-weighing";
import { weighSeeds } from "../../_actions/ledger";
import { LotForm, SideBySide } from "../../_form/lot-form";

const portions = Array.from({ length: portionsAtOnce }, (_, index) => index);
const ordinals = ["First", "Second", "Third", "Fourth"];

const labels = Object.fromEntries(
  portions.flatMap((index) => [
    [`counts.${index}.seeds`, `${ordinals[index]} portion, seeds`],
    [`counts.${index}.grams`, `${ordinals[index]} portion, grams`],
  ]),
);

/** Portions of seed, counted and weighed. */
export function WeighForm({ lotId, today }: { lotId: string; today: string }) {
  return (
    <LotForm
      draft={`lot:${lotId}:weigh`}
      deed={weighSeeds.bind(null, lotId)}
      start={{ on: today }}
      labels={labels}
      submit="Take the seed weight from these"
      back={`/lots/${lotId}#seed-weight`}
      standing="This moves no seed. It is an entry in the records: History can take it back."
    >
      {(field) => (
        <>
          {portions.map((index) => (
            <SideBySide key={index}>
              <NumberField
                {...field(`counts.${index}.seeds`)}
                label={`${ordinals[index]} portion`}
                unit="seeds"
                whole
                required={index === 0}
              />
              <NumberField {...field(`counts.${index}.grams`)} label="weighs" unit="g" required={index === 0} />
            </SideBySide>
          ))}
          <DateField {...field("on")} label="When" />
          <TextField {...field("note")} label="Notes" />
        </>
      )}
    </LotForm>
  );
}

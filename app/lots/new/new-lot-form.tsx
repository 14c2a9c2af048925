"use client";

import { Choice, DateField, NumberField, type Option, Select, TextField } from "@/components/ui";
import { enterLot } from "../_actions/record";
import { HolderFields } from "../_form/holder-fields";
import { FieldGroup, LotForm, Seldom, SideBySide } from "../_form/lot-form";
import { SeldomTold, seldomFields, YearFields } from "../_form/told-fields";
import { firstEntryOptions, originOptions } from "../_words/choices";

const labels = {
  variety: "Variety",
  number: "Lot number",
  origin: "Where the seed came from",
  growOut: "Grow-out",
  year: "Year of the harvest",
  holder: "Who holds it",
  newHolder: "Somebody new",
  amount: "How much",
  amountOn: "When",
  thousandSeedGrams: "Weight of a thousand seeds",
  inbreeding: "Inbreeding",
  founderLines: "One line or many",
};

/** A lot entered by hand. */
export function NewLotForm({
  start,
  varieties,
  stewards,
}: {
  start: Readonly<Record<string, string>>;
  varieties: readonly Option[];
  stewards: readonly Option[];
}) {
  return (
    <LotForm
      draft="lot:new"
      deed={enterLot}
      start={start}
      labels={labels}
      submit="Enter the lot"
      back="/lots"
      standing="This is an entry in the records: as long as nothing is built on it, History can take it back whole."
    >
      {(field) => (
        <>
          <Select {...field("variety")} label="Variety" options={varieties} empty="choose the variety" required />
          <Choice {...field("origin")} label="Where the seed came from" options={originOptions} required />
          <SideBySide>
            <TextField {...field("giver")} label="Whose hand it came from" />
            <TextField {...field("growOut")} label="Name of the grow-out" hint="only where it is on record" />
          </SideBySide>
          <YearFields field={field} />
          <HolderFields field={field} stewards={stewards} />
          <TextField
            {...field("number")}
            label="Lot number"
            hint="given once and for life; left empty, its label code is its number"
          />
          <FieldGroup title="What is in the jar">
            <SideBySide>
              <NumberField {...field("amount")} label="How much" unit="g" />
              <Select {...field("amountKind")} label="how that is known" options={firstEntryOptions} required />
              <DateField {...field("amountOn")} label="when" hint="the day, or what is known of it" />
            </SideBySide>
          </FieldGroup>
          <FieldGroup title="What was told with it">
            <TextField {...field("story")} label="The story, in the giver's own words" lines={4} />
            <TextField {...field("notes")} label="Notes of your own" lines={2} />
          </FieldGroup>
          <Seldom
            title="Seed weight, treatment, how sure the name is"
            open={seldomFields.some((name) => field(name).refusals.length > 0)}
          >
            <SeldomTold field={field} founder />
          </Seldom>
        </>
      )}
    </LotForm>
  );
}

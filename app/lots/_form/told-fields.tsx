import { DateField, NumberField, Select, TextField } from "@/components/ui";
import { identityOptions, lineOptions, treatmentOptions } from "../_words/choices";
import { type FieldOf, SideBySide } from "./lot-form";

/** When the seed was harvested, and how that was told. */
export function YearFields({ field }: { field: FieldOf }) {
  return (
    <SideBySide>
      <DateField {...field("year")} label="Year of the harvest" />
      <TextField {...field("yearWords")} label="as it was told" hint="about 1994, from my aunt's jar" />
    </SideBySide>
  );
}

/** What is seldom known of a lot, and matters where it is. */
export function SeldomTold({ field, founder }: { field: FieldOf; founder: boolean }) {
  return (
    <>
      <NumberField
        {...field("thousandSeedGrams")}
        label="A thousand seeds weigh"
        unit="g"
        hint="if somebody has weighed it; it can be counted out and weighed later"
      />
      <Select {...field("identityGrade")} label="How sure is the name" options={identityOptions} empty="not said" />
      <SideBySide>
        <Select {...field("treatment")} label="Treated" options={treatmentOptions} empty="not said" />
        <TextField {...field("treatmentSubstance")} label="with what" />
      </SideBySide>
      <TextField
        {...field("donorNumber")}
        label="The giver's own number for it"
        hint="kept beside ours, never in its place"
      />
      {founder ? (
        <>
          <Select
            {...field("founderLines")}
            label="One line or many"
            hint="of a crop that sets seed with its own pollen; without it no share of its diversity can be given"
            options={lineOptions}
            empty="nobody knows"
          />
          <NumberField
            {...field("inbreeding")}
            label="Inbreeding, if it was worked out"
            hint="0 to 1; left empty, the crop's usual is taken and said so"
          />
        </>
      ) : null}
    </>
  );
}

/** The fields of SeldomTold, to open their fold where one of them was refused. */
export const seldomFields = [
  "thousandSeedGrams",
  "identityGrade",
  "treatment",
  "treatmentSubstance",
  "donorNumber",
  "founderLines",
  "inbreeding",
] as const;

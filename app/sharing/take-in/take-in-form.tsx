"use client";

import { Choice, DateField, NumberField, type Option, Select, TextField, Tick } from "@/components/ui";
import { dateInWords } from "@/lib/display/dates";
import type { AnsweredShown } from "@/lib/registry/transfers/read-taking-in";
import { FieldGroup, type FieldOf, LotForm, Seldom, SideBySide } from "../../lots/_form/lot-form";
import { YearFields } from "../../lots/_form/told-fields";
import { identityOptions, isolationOptions, treatmentOptions } from "../../lots/_words/choices";
import { takeIn } from "../_actions/transfers";
import { takingOptions } from "../_words/transfer-words";

const labels = {
  kind: "How it came",
  variety: "Which variety",
  holder: "Who takes it in",
  newHolder: "Who takes it in",
  giver: "Who brings it",
  giverWords: "Who brings it",
  fromLot: "Their lot",
  story: "The story",
  amount: "How much",
  unit: "Counted in",
  on: "When",
  number: "Its number",
  year: "Year of the harvest",
  thousandSeedGrams: "A thousand seeds weigh",
};

/** Seed that comes in: from whom, with which story, what was seen of it. */
export function TakeInForm({
  start,
  answered,
  varieties,
  stewards,
  weightUnit,
}: {
  start: Readonly<Record<string, string>>;
  answered: AnsweredShown | null;
  varieties: readonly string[];
  stewards: readonly string[];
  weightUnit: "g" | "oz";
}) {
  const people = stewards.map((name): Option => ({ value: name, words: name }));
  const seldom = ["number", "thousandSeedGrams", "strain", "donorNumber", "isolationReasons", "treatmentSubstance"];
  return (
    <LotForm
      draft={`take-in:${answered?.id ?? "new"}`}
      deed={takeIn}
      start={start}
      labels={labels}
      submit="Take it in, into quarantine"
      back="/sharing"
      standing="A mistaken record can be taken back in History. The seed stays where you put it: apart."
    >
      {(field) => (
        <>
          {answered ? <Answers answered={answered} field={field} /> : null}
          <Choice {...field("kind")} label="How it came" options={takingOptions} required />
          <FieldGroup title="The giver, and the story">
            <SideBySide>
              {people.length > 0 ? (
                <Select {...field("giver")} label="A steward on record" options={people} empty="nobody of these" />
              ) : null}
              <TextField {...field("giverWords")} label="or somebody else" hint="a cousin from over the hill" />
            </SideBySide>
            <TextField
              {...field("story")}
              label="The story, in their words"
              hint="where it grew, among what, how many plants, who had it before, whether it was dressed, what they eat of it"
              lines={6}
              required
            />
            <Tick
              name="nothingTold"
              label="Nothing was told"
              note="asked, and nobody knew: not the same as not asked"
              checked={field("nothingTold").value === "yes"}
            />
          </FieldGroup>
          <FieldGroup title="The seed">
            <Variety field={field} varieties={varieties} />
            <TextField
              {...field("fromLot")}
              label="Their lot, if it is on record here"
              hint="its number: then the parents are known and both ledgers say so; empty: unknown before here"
            />
            <SideBySide>
              <NumberField {...field("amount")} label="How much" hint="empty: nobody weighed it yet" />
              <Select
                {...field("unit")}
                label="counted in"
                options={[
                  { value: "g", words: weightUnit === "g" ? "grams" : "ounces" },
                  { value: "seeds", words: "seeds" },
                ]}
                required
              />
              <DateField {...field("on")} label="When it came" hint="the day, or 2026-11" required />
            </SideBySide>
            <YearFields field={field} />
            <Select {...field("treatment")} label="Treated" options={treatmentOptions} empty="not said" />
            <TextField
              {...field("looked")}
              label="Looked at: insects, mould, dark horns, soil, weed seed"
              hint="what you saw, or that you saw none of it; empty: not looked"
              lines={2}
            />
          </FieldGroup>
          <FieldGroup title="Who takes it in">
            <SideBySide>
              {people.length > 0 ? (
                <Select {...field("holder")} label="A steward on record" options={people} empty="not said" />
              ) : null}
              <TextField {...field("newHolder")} label="or somebody new" />
            </SideBySide>
          </FieldGroup>
          <Seldom
            title="More of it"
            open={seldom.some((name) => field(name).value !== "" || field(name).refusals.length > 0)}
          >
            <TextField {...field("number")} label="Its number here" hint="empty: its label code is its number" />
            <TextField {...field("donorNumber")} label="The giver’s own number for it" />
            <TextField
              {...field("strain")}
              label="Which strain it is said to be"
              hint="a name that is new here becomes one"
            />
            <NumberField {...field("thousandSeedGrams")} label="A thousand seeds weigh" unit="g" />
            <TextField {...field("treatmentSubstance")} label="Treated with what" />
            <Select
              {...field("identityGrade")}
              label="How sure is the name"
              options={identityOptions}
              empty="not said"
            />
            <SideBySide>
              <Select
                {...field("isolationGrade")}
                label="How it was isolated"
                options={isolationOptions}
                empty="not said"
              />
              <TextField {...field("isolationReasons")} label="as they told it" />
            </SideBySide>
          </Seldom>
        </>
      )}
    </LotForm>
  );
}

/** What was lent or given, and whether this keeps what was promised. */
function Answers({ answered, field }: { answered: AnsweredShown; field: FieldOf }) {
  return (
    <div>
      <input type="hidden" name="answers" value={answered.id} />
      <p>
        It answers the {answered.kind} of lot {answered.number}, {answered.variety}, {dateInWords(answered.on)}
        {answered.promised.length > 0 ? `: “${answered.promised.join("”, “")}”` : ""}.
      </p>
      {answered.promised.length > 0 ? (
        <Tick
          name="keepsPromise"
          label="This keeps what was promised"
          checked={field("keepsPromise").value === "yes"}
        />
      ) : null}
    </div>
  );
}

function Variety({ field, varieties }: { field: FieldOf; varieties: readonly string[] }) {
  const options = varieties.map((name): Option => ({ value: name, words: name }));
  return (
    <Select
      {...field("variety")}
      label="Which variety"
      hint="as it is said to be; if it is none of these, enter the variety first"
      options={options}
      empty="choose"
      required
    />
  );
}

"use client";

import { Choice, DateField, NumberField, Select, TextField } from "@/components/ui";
import { refusalSentence } from "@/lib/display/refusals";
import type { Evenness } from "@/lib/registry/harvests/evenness-of-harvest";
import type { PlotOfHarvest } from "@/lib/registry/harvests/size-of-harvest";
import { ActForm } from "../../../../../lots/_form/act-form";
import { putBagsTogether } from "../../../../_actions/put-together";
import { EqualTakings, type NamedAmount } from "../../../../_harvest/evenness-view";
import { type AmountUnit, amountWords } from "../../../../_harvest/evenness-words";
import { TakingOfBags, takingTyped } from "../../../../_harvest/take-some";

const ways = [
  { value: "equal", words: "the same of each bag", note: "the smallest that is not left out sets how much" },
  {
    value: "as even as can be",
    words: "as evenly as an amount allows",
    note: "small bags whole, of the others all the same",
  },
  { value: "all", words: "the whole of each", note: "as heavy as each plant bore" },
];

/** Bags that were kept apart become one jar: what that does is shown while it is chosen, and it is asked twice. */
export function TogetherForm({
  growOutId,
  harvestId,
  lot,
  today,
  even,
  named,
  plot,
  detasselled,
  unit,
}: {
  growOutId: string;
  harvestId: string;
  lot: string;
  today: string;
  even: Evenness;
  named: readonly NamedAmount[];
  plot: PlotOfHarvest;
  detasselled: number | null;
  unit: AmountUnit;
}) {
  const options = even.takings.map(({ leftOut, bags, each, total }) => ({
    value: String(leftOut),
    words:
      `${amountWords(each, unit)} of ${leftOut === 0 ? "all" : ""} ${bags} bags, ${amountWords(total, unit)} in all`.replace(
        "  ",
        " ",
      ),
  }));
  const whole = named.reduce((sum, { amount }) => sum + amount, 0);
  return (
    <ActForm
      draft={`grow-out:${growOutId}:harvest:${harvestId}:together`}
      deed={putBagsTogether.bind(null, growOutId, harvestId, unit.unit === "g")}
      start={{ way: "equal", leftOut: "0", on: today }}
      labels={{ way: "How", leftOut: "How much of each", wanted: "How much in all", on: "When" }}
      back={`/grow-outs/${growOutId}#harvested`}
      standing="Seed that was mixed stays mixed. What is left in the bags leaves the ledger as discarded."
      question={(values) => question(values, { lot, options, named, unit, whole })}
    >
      {({ field, values }) => {
        const taking = takingTyped(values.wanted ?? "", named, unit);
        return (
          <>
            <Choice {...field("way")} label="Put together" options={ways} required />
            <div hidden={values.way !== "equal"}>
              <Select {...field("leftOut")} label="How much of each" options={options} required />
              <EqualTakings even={even} unit={unit} />
            </div>
            <div hidden={values.way !== "as even as can be"} className="stack-near">
              <NumberField
                {...field("wanted")}
                label="How much in all"
                unit={unit.unit === "g" ? unit.units.weight : "seeds"}
                refusals={taking && !taking.ok ? taking.refusals.map(refusalSentence) : field("wanted").refusals}
                required
              />
              {taking?.ok ? (
                <TakingOfBags taking={taking.value} named={named} plot={plot} detasselled={detasselled} unit={unit} />
              ) : null}
            </div>
            <DateField {...field("on")} label="When" required />
            <TextField {...field("note")} label="Note" />
          </>
        );
      }}
    </ActForm>
  );
}

function question(
  values: Readonly<Record<string, string>>,
  {
    lot,
    options,
    named,
    unit,
    whole,
  }: {
    lot: string;
    options: readonly { value: string; words: string }[];
    named: readonly NamedAmount[];
    unit: AmountUnit;
    whole: number;
  },
) {
  const common = {
    button: "Put them together",
    title: `Put the bags of lot ${lot} together?`,
    confirm: "They are mixed",
  };
  if (values.way === "all")
    return { ...common, says: `The whole of all ${named.length} bags, ${amountWords(whole, unit)}.`, ready: true };
  if (values.way === "equal") {
    const chosen = options.find(({ value }) => value === values.leftOut);
    return { ...common, says: chosen ? `${chosen.words}.` : "", ready: chosen !== undefined };
  }
  const taking = takingTyped(values.wanted ?? "", named, unit);
  const total = taking?.ok ? taking.value.takings.reduce((sum, amount) => sum + amount, 0) : 0;
  return {
    ...common,
    says: `${amountWords(total, unit)} in all, at most ${taking?.ok ? amountWords(taking.value.cap, unit) : ""} of each.`,
    ready: taking?.ok === true,
  };
}

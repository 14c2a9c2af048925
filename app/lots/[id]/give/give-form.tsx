"use client";

import { Choice, type Option, TextField } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import type { UnitSettings } from "@/lib/display/units";
import type { SeedsPerGram } from "@/lib/registry/lots/live-seeds";
import type { JarBefore } from "@/lib/registry/transfers/after-giving";
import { type GivingGround, type GivingRule, givingRules } from "@/lib/registry/transfers/giving-rules";
import type { StewardToGiveTo } from "@/lib/registry/transfers/read-giving";
import type { Saying } from "@/lib/registry/transfers/what-to-say";
import { doneInWords, givingOptions } from "../../../sharing/_words/transfer-words";
import { ActForm } from "../../_form/act-form";
import { Seldom } from "../../_form/lot-form";
import { giveFromLot } from "./action";
import { AmountFields, DepositFields, RecipientFields, ReturnFields, ToldFields } from "./give-fields";
import { type GivingTyped, givingTyped } from "./giving-typed";
import { WhatStays } from "./what-stays";

const labels = {
  kind: "How it goes",
  holder: "Who gets it",
  newHolder: "A new name",
  toWords: "Somebody whose name is not kept",
  amount: "How much",
  unit: "Counted in",
  on: "When",
  promise: "What was promised",
  replyDue: "When to ask",
  building: "Building",
  number: "Its number there",
  told: "What was told",
  override: "Why it is given all the same",
};

/** Seed that leaves a jar: what goes, what stays, what stands against it, what was told; asked twice. */
export function GiveForm({
  lotId,
  number,
  holder,
  start,
  units,
  stewards,
  sayings,
  ground,
  jar,
  seedsPerGram,
  reserved,
  until,
}: {
  lotId: string;
  number: string;
  holder: string | null;
  start: Readonly<Record<string, string>>;
  units: UnitSettings;
  stewards: readonly StewardToGiveTo[];
  sayings: readonly Saying[];
  ground: GivingGround;
  jar: JarBefore;
  seedsPerGram: SeedsPerGram;
  reserved: number | null;
  until: string | null;
}) {
  const { thousandSeedGrams } = jar;
  const known = { holder, stewards, units, thousandSeedGrams, seedsPerGram };
  const unitOptions: Option[] = [
    { value: "g", words: units.weight === "g" ? "grams" : "ounces" },
    ...(thousandSeedGrams === null ? [] : [{ value: "seeds", words: "seeds" }]),
  ];
  return (
    <ActForm
      draft={`lot:${lotId}:give`}
      deed={giveFromLot.bind(null, lotId)}
      start={start}
      labels={labels}
      back={`/lots/${lotId}`}
      standing="Seed that was handed over stays handed over."
      question={(values) => {
        const giving = givingTyped(values, known);
        return question(giving, givingRules(ground, giving), values, number, sayings);
      }}
    >
      {({ field, values, fill }) => {
        const giving = givingTyped(values, known);
        return (
          <>
            <Choice {...field("kind")} label="How it goes" options={givingOptions} required />
            <RecipientFields field={field} stewards={stewards} holder={holder} />
            {values.kind === "safety duplicate" ? (
              <DepositFields field={field} required={giving.staysWithHolder} />
            ) : null}
            <AmountFields field={field} units={unitOptions} seeds={thousandSeedGrams !== null} />
            <WhatStays
              jar={jar}
              reserved={reserved}
              until={until}
              giving={giving}
              rules={givingRules(ground, giving)}
              units={units}
              field={field}
            />
            {giving.staysWithHolder ? null : <ToldFields field={field} sayings={sayings} fill={fill} />}
            {giving.staysWithHolder || values.kind === "return" ? null : (
              <ReturnFields field={field} loan={values.kind === "loan"} />
            )}
            <Seldom
              title="More of it"
              open={["number", "purpose", "conditions", "note"].some((name) => !!values[name])}
            >
              <TextField {...field("number")} label="Its number there" hint="empty: its label code is its number" />
              <TextField {...field("purpose")} label="What for" />
              <TextField {...field("conditions")} label="On what terms" />
              <TextField {...field("note")} label="Note" lines={2} />
            </Seldom>
          </>
        );
      }}
    </ActForm>
  );
}

/** What is asked before the seed is handed over. */
function question(
  giving: GivingTyped,
  rules: readonly GivingRule[],
  values: Readonly<Record<string, string>>,
  number: string,
  sayings: readonly Saying[],
) {
  const told = sayings.filter((saying) => values[`told.${saying.key}`] === "yes").length;
  const must = sayings.filter((saying) => saying.must && values[`told.${saying.key}`] !== "yes").length;
  const to = giving.to === "" ? "" : giving.staysWithHolder ? "" : ` to ${giving.to}`;
  const amount = giving.amountWords === "" ? "seed" : giving.amountWords;
  return {
    button: giving.staysWithHolder ? "Put it there" : "Hand it over",
    title: `${amount} of lot ${number}${to}?`,
    confirm: giving.staysWithHolder ? "It stands there" : "It is handed over",
    ready: true,
    says: (
      <>
        <p>
          {amount} of lot {number}{" "}
          {giving.staysWithHolder ? "stand in another building" : `are ${doneInWords(giving.kind)}${to}`}.
        </p>
        {rules.length > 0 ? (
          <p className="waits">
            {counted(rules.length, "rule")} {rules.length === 1 ? "stands" : "stand"} against it
            {values.override?.trim() ? `. Your reason: ${values.override.trim()}` : ", and no reason is written."}
          </p>
        ) : null}
        {giving.staysWithHolder ? null : (
          <p className={must > 0 ? "waits" : undefined}>
            {counted(told, "thing")} told with it{must > 0 ? "; what can hurt was not said yet" : ""}.
          </p>
        )}
      </>
    ),
  };
}

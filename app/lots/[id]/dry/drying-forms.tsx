"use client";

import { type FormEvent, useState } from "react";
import { ExplainedHere } from "@/components/numbers";
import { DateField, NumberField, type Option, Select, TextField, Tick } from "@/components/ui";
import { refusalSentence } from "@/lib/display/refusals";
import { gramsTyped, type UnitSettings, weight } from "@/lib/display/units";
import { moistureMethods } from "@/lib/schemas/drying/drying-forms";
import { decimal } from "@/lib/schemas/lots/form-fields";
import { dryTo } from "@/lib/science/seed-moisture/dry-to";
import { layOut, readMoisture, writeDried } from "../../_actions/drying";
import { textsOf } from "../../_form/form-answer";
import { LotForm, SideBySide } from "../../_form/lot-form";
import { targetExplanation } from "../../_words/drying-words";

const methods: readonly Option[] = moistureMethods.map((method) => ({ value: method, words: method }));

/** How moist the seed is, or the air that it rests in. */
export function MoistureForm({ lotId, today }: { lotId: string; today: string }) {
  return (
    <LotForm
      draft={`lot:${lotId}:moisture`}
      deed={readMoisture.bind(null, lotId)}
      start={{ on: today }}
      labels={{
        percent: "Moisture of the seed",
        relativeHumidityPercent: "Humidity of the air",
        temperatureC: "Warmth",
      }}
      submit="Write the reading down"
      back={`/lots/${lotId}`}
      standing="This moves no seed. It is an entry in the records: History can take it back."
    >
      {(field) => (
        <>
          <SideBySide>
            <NumberField {...field("percent")} label="Moisture of the seed" unit="%" hint="of the wet weight" />
            <NumberField
              {...field("relativeHumidityPercent")}
              label="or humidity of the air with it"
              unit="%"
              hint="as a card in the closed jar shows"
            />
            <NumberField {...field("temperatureC")} label="at" unit="°C" hint="warmth of the room" />
          </SideBySide>
          <Select {...field("method")} label="Found out by" options={methods} empty="not said" />
          <DateField {...field("on")} label="When" required />
          <TextField {...field("note")} label="Notes" />
        </>
      )}
    </LotForm>
  );
}

const number = decimal({ above: 0 });

function read(text: string | undefined): number | null {
  const outcome = text === undefined || text.trim() === "" ? null : number(text);
  return outcome?.ok ? outcome.value : null;
}

/** Seed laid out to dry: what it will weigh when it is dry enough is told as it is typed. */
export function LayOutForm({
  lotId,
  start,
  units,
}: {
  lotId: string;
  start: Readonly<Record<string, string>>;
  units: UnitSettings;
}) {
  const [typed, setTyped] = useState(start);
  const look = (event: FormEvent<HTMLDivElement>) => {
    const form = event.currentTarget.closest("form");
    if (form) setTyped(textsOf(new FormData(form)));
  };
  return (
    <LotForm
      draft={`lot:${lotId}:drying`}
      deed={layOut.bind(null, lotId)}
      start={start}
      labels={{ startGrams: "It weighs now", startPercent: "Moisture now", targetPercent: "Moisture wanted" }}
      submit="It is laid out"
      back={`/lots/${lotId}`}
      standing="This moves no seed. It is an entry in the records: History can take it back."
    >
      {(field) => (
        <div onInput={look} className="stack">
          <SideBySide>
            <NumberField {...field("startGrams")} label="It weighs now" unit={units.weight} required />
            <NumberField {...field("startPercent")} label="Moisture now" unit="%" required />
            <NumberField {...field("targetPercent")} label="Moisture wanted" unit="%" required />
          </SideBySide>
          <TargetLine typed={typed} units={units} />
          <DateField {...field("on")} label="When" required />
          <TextField {...field("note")} label="Where, and how thin" hint="no more than two seeds deep, in moving air" />
        </div>
      )}
    </LotForm>
  );
}

/** The weight to wait for. */
function TargetLine({ typed, units }: { typed: Readonly<Record<string, string>>; units: UnitSettings }) {
  const [now, moisture, wanted] = [read(typed.startGrams), read(typed.startPercent), read(typed.targetPercent)];
  if (now === null || moisture === null || wanted === null)
    return <p className="quiet">Write the three numbers, and the scales can tell when it is dry.</p>;
  const input = { grams: gramsTyped(now, units), moisturePercent: moisture, targetPercent: wanted };
  const target = dryTo(input);
  return (
    <div aria-live="polite" className="lead">
      {target.ok ? (
        <>
          Dry enough when it weighs{" "}
          <ExplainedHere explanation={targetExplanation(input, target.value.targetGrams, units)}>
            {weight(target.value.targetGrams, units)}
          </ExplainedHere>
          .
        </>
      ) : (
        <span className="waits">{target.refusals.map(refusalSentence).join(" ")}</span>
      )}
    </div>
  );
}

/** What dried seed weighs. */
export function DriedForm({
  lotId,
  dryingId,
  today,
  units,
}: {
  lotId: string;
  dryingId: string;
  today: string;
  units: UnitSettings;
}) {
  return (
    <LotForm
      draft={`lot:${lotId}:drying:${dryingId}`}
      deed={writeDried.bind(null, lotId, dryingId)}
      start={{ on: today }}
      labels={{ endGrams: "It weighs now" }}
      submit="It is dry"
      back={`/lots/${lotId}`}
      standing="It is an entry in the records: History can take it back."
    >
      {(field) => (
        <>
          <NumberField {...field("endGrams")} label="It weighs now" unit={units.weight} required />
          <Tick
            name="wholeLot"
            label="That is the whole lot"
            note="the ledger takes it as weighed: what left it was water"
            checked={field("wholeLot").value === "yes"}
          />
          <DateField {...field("on")} label="When" required />
          <TextField {...field("note")} label="Notes" />
        </>
      )}
    </LotForm>
  );
}

"use client";

import { Choice, DateField, type Option, Select, TextField, Tick } from "@/components/ui";
import { boxOfLot } from "@/lib/schemas/neighbours/isolation-claim";
import { LotForm, SideBySide } from "../../lots/_form/lot-form";
import { isolationOptions } from "../../lots/_words/choices";
import { claimForLots, enterLook, enterMethod, noteNeighbourFlowering, putMethodRight } from "../_actions/neighbours";
import { evidenceOptions, methodOptions, momentOptions, organOptions, privacyHint } from "./choices";

const entry = "An entry in the records: History can take it back.";

/** That somebody looked, and whether none was found. */
export function LookForm({
  growOutId,
  start,
  some,
}: {
  growOutId: string;
  start: Record<string, string>;
  some: boolean;
}) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:looked`}
      deed={enterLook.bind(null, growOutId)}
      start={start}
      labels={{ on: "Looked on", noneFound: "None found" }}
      submit="Write down that somebody looked"
      back={`/grow-outs/${growOutId}/neighbours`}
      standing={`${entry} Look again when volunteers and bolters flower.`}
    >
      {(field) => (
        <>
          <DateField {...field("on")} label="Looked on" hint="the last day, as 2026-06-12, or 2026-06" required />
          {some ? null : (
            <Tick
              name="noneFound"
              label="None was found"
              note="neither planting nor wild kin out to the outer ring, nor volunteers"
              checked={field("noneFound").value === "yes"}
            />
          )}
        </>
      )}
    </LotForm>
  );
}

/** What was done to keep other pollen off, new or as it stands. */
export function MethodForm({
  growOutId,
  methodId,
  start,
}: {
  growOutId: string;
  methodId?: string;
  start: Record<string, string>;
}) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:method:${methodId ?? "new"}`}
      deed={methodId ? putMethodRight.bind(null, growOutId, methodId) : enterMethod.bind(null, growOutId)}
      start={start}
      labels={{ method: "What was done", evidence: "How it is known", fromOn: "From", toOn: "To" }}
      submit={methodId ? "Put it right" : "Write it down"}
      back={`/grow-outs/${growOutId}/neighbours#methods`}
      standing={entry}
    >
      {(field) => (
        <>
          <Choice {...field("method")} label="What was done" options={methodOptions} required />
          <SideBySide>
            <DateField {...field("fromOn")} label="From" hint="bag on, cage shut, first hand-pollinated" />
            <DateField {...field("toOn")} label="To" hint="bag off, cage open, the last" />
          </SideBySide>
          <Select
            {...field("evidence")}
            label="How it is known"
            hint="what is only assumed shuts no pollen out"
            options={evidenceOptions}
            empty="not written"
          />
          <TextField
            {...field("note")}
            label="Note"
            lines={2}
            hint={`mesh, tears, swaps, fruits tagged, rows between; ${privacyHint}`}
          />
        </>
      )}
    </LotForm>
  );
}

/** A day on which a neighbour was seen in flower. */
export function NeighbourFloweringForm({
  growOutId,
  neighbourId,
  start,
}: {
  growOutId: string;
  neighbourId: string;
  start: Record<string, string>;
}) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:neighbour:${neighbourId}:flowering`}
      deed={noteNeighbourFlowering.bind(null, growOutId, neighbourId)}
      start={start}
      labels={{ organ: "What was seen", moment: "Which", on: "On" }}
      submit="Note it"
      back={`/grow-outs/${growOutId}/neighbours#flowering`}
      standing="A note in the records. A wrong one is put right by a new one that points to it; both stay to be read."
    >
      {(field) => (
        <>
          <SideBySide>
            <Select {...field("moment")} label="Which" options={momentOptions} required />
            <Select {...field("organ")} label="What was seen" options={organOptions} required />
          </SideBySide>
          <DateField {...field("on")} label="On" hint="the day, as 2026-07-12" required />
          <Tick
            name="correct"
            label="It puts right what was noted of the same"
            checked={field("correct").value === "yes"}
          />
          <TextField {...field("note")} label="Note" />
        </>
      )}
    </LotForm>
  );
}

/** What is claimed of the isolation of lots: proposed, and a person's to change. */
export function ClaimForm({
  growOutId,
  start,
  lots,
}: {
  growOutId: string;
  start: Record<string, string>;
  lots: readonly (Option & { readonly note: string })[];
}) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:claim`}
      deed={claimForLots.bind(null, growOutId)}
      start={start}
      labels={{ grade: "The isolation claimed", reasons: "Why", lots: "For which lots" }}
      submit="Claim it"
      back={`/grow-outs/${growOutId}/neighbours#claim`}
      standing={`${entry} What a lot claimed before stays in its history.`}
    >
      {(field) => (
        <>
          <Choice
            {...field("grade")}
            label="The isolation claimed"
            hint="as it is proposed; choose otherwise where you know better, and say why"
            options={isolationOptions}
            required
          />
          <TextField
            {...field("reasons")}
            label="Why"
            lines={5}
            hint="stays with the lots and goes where they go: no name of a neighbour, no place"
            required
          />
          <fieldset id="field-lots" tabIndex={-1}>
            <legend>
              <b>For which lots</b>
            </legend>
            {lots.map((lot) => (
              <Tick
                key={lot.value}
                name={boxOfLot(lot.value)}
                label={lot.words}
                note={lot.note}
                checked={field(boxOfLot(lot.value)).value === "yes"}
              />
            ))}
            {field("lots").refusals.map((sentence) => (
              <p key={sentence} className="waits">
                {sentence}
              </p>
            ))}
          </fieldset>
        </>
      )}
    </LotForm>
  );
}

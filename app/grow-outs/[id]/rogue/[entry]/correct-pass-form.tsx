"use client";

import { Choice, DateField, NumberField, type Option, Select, TextField } from "@/components/ui";
import { groundWith } from "@/lib/registry/grow-outs/size-if";
import type { SizeGround } from "@/lib/registry/grow-outs/size-so-far";
import { SideBySide } from "../../../../lots/_form/lot-form";
import { putPassRight } from "../../../_actions/field";
import { EveningForm } from "../../../_field/evening-form";
import { LiveSize } from "../../../_field/live-size";
import { typedPass } from "../../../_field/typed-events";
import { timingOptions } from "../../../_words/field-words";

/** A line of a walk as it should have been. */
export function CorrectPassForm({
  growOutId,
  passId,
  start,
  stages,
  reasons,
  ground,
}: {
  growOutId: string;
  passId: string;
  start: Readonly<Record<string, string>>;
  stages: readonly Option[];
  reasons: readonly Option[];
  ground: SizeGround;
}) {
  const back = `/grow-outs/${growOutId}#counts`;
  return (
    <EveningForm
      draft={`grow-out:${growOutId}:pass:${passId}`}
      deed={putPassRight.bind(null, passId)}
      start={start}
      labels={labels}
      submit="Put the line right"
      back={back}
      leadsTo={back}
      standing="The line that stood here stays to be read and counts no more."
      beside={(typed) => <LiveSize ground={groundWith(ground, { passes: [typedPass(typed)] }, new Set([passId]))} />}
    >
      {(field) => (
        <>
          <SideBySide>
            <DateField {...field("on")} label="Walked on" hint="" required />
            <Select {...field("stage")} label="At the stage" options={stages} empty="not written" />
          </SideBySide>
          <Choice {...field("timing")} label="Had pollen flown?" options={timingOptions} required />
          <SideBySide>
            <NumberField {...field("looked")} label="Plants looked at" whole />
            <NumberField {...field("pulled")} label="Pulled" whole required />
            <NumberField {...field("left")} label="Left standing" whole />
          </SideBySide>
          <Select {...field("reason")} label="Why" options={reasons} empty="not written" />
          <TextField {...field("note")} label="Note" />
          <TextField {...field("why")} label="What was wrong" required />
        </>
      )}
    </EveningForm>
  );
}

const labels = {
  on: "Walked on",
  stage: "At the stage",
  timing: "Had pollen flown?",
  looked: "Plants looked at",
  pulled: "Pulled",
  left: "Left standing",
  reason: "Why",
  why: "What was wrong",
};

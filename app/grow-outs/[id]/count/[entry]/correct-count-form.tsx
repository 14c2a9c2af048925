"use client";

import { DateField, NumberField, type Option, Select, TextField } from "@/components/ui";
import { groundWith } from "@/lib/registry/grow-outs/size-if";
import type { SizeGround } from "@/lib/registry/grow-outs/size-so-far";
import type { Stage } from "@/lib/schemas/grow-outs/field-kinds";
import { SideBySide } from "../../../../lots/_form/lot-form";
import { putCountRight } from "../../../_actions/field";
import { EveningForm } from "../../../_field/evening-form";
import { LiveSize } from "../../../_field/live-size";
import { typedCount } from "../../../_field/typed-events";
import { thinningOptions } from "../../../_words/field-words";

/** A count as it should have been. */
export function CorrectCountForm({
  growOutId,
  countId,
  start,
  stages,
  separate,
  ground,
}: {
  growOutId: string;
  countId: string;
  start: Readonly<Record<string, string>>;
  stages: readonly Option[];
  separate: boolean;
  ground: SizeGround;
}) {
  const back = `/grow-outs/${growOutId}#counts`;
  return (
    <EveningForm
      draft={`grow-out:${growOutId}:count:${countId}`}
      deed={putCountRight.bind(null, countId)}
      start={start}
      labels={{ stage: "What was counted", plants: "Plants", males: "Males", on: "On", why: "What was wrong" }}
      submit="Put the count right"
      back={back}
      leadsTo={back}
      standing="The count that stood here stays to be read and counts no more."
      beside={({ stage = "", plants, males, on }) => {
        const counts = typedCount("typed", stage as Stage, plants, males, on);
        return <LiveSize ground={groundWith(ground, { counts }, new Set([countId]))} />;
      }}
    >
      {(field, typed) => (
        <>
          <Select {...field("stage")} label="What was counted" options={stages} required />
          <SideBySide>
            <NumberField {...field("plants")} label="Plants" whole required />
            {separate ? <NumberField {...field("males")} label="Males" whole /> : null}
          </SideBySide>
          <DateField {...field("on")} label="On" />
          {typed.stage === "thinned" ? (
            <Select {...field("thinnedBy")} label="Thinned" options={thinningOptions} empty="not written" />
          ) : null}
          <TextField {...field("note")} label="Note" />
          <TextField {...field("why")} label="What was wrong" required />
        </>
      )}
    </EveningForm>
  );
}

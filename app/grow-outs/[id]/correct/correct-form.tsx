"use client";

import { DateField, NumberField, TextField } from "@/components/ui";
import { FieldGroup, LotForm, Seldom, SideBySide } from "../../../lots/_form/lot-form";
import type { FieldOf } from "../../../lots/_form/use-form-answer";
import { putRight } from "../../_actions/plan";
import { PlanFields, type PlanOffers, planLabels } from "../../_form/plan-fields";

/** A plan, or the record of a grow-out, as it should have been. */
export function CorrectForm({
  growOutId,
  start,
  offers,
  sown,
}: {
  growOutId: string;
  start: Readonly<Record<string, string>>;
  offers: PlanOffers;
  sown: boolean;
}) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:correct`}
      deed={putRight.bind(null, growOutId)}
      start={start}
      labels={{ ...planLabels, sown: "Sown", seedsSown: "Seeds sown", reason: "What was wrong" }}
      submit="Put it right"
      back={`/grow-outs/${growOutId}`}
      corrects
      standing="This is an entry in the records: what stood there before stays in the history, and History can take it back."
    >
      {(field) => (
        <PlanFields
          field={field}
          offers={offers}
          parentsTitle={sown ? "Which lots were sown" : "Which lots are to be sown"}
        >
          {sown ? (
            <FieldGroup title="The sowing">
              <SownFields field={field} />
              <TextField
                {...field("reason")}
                label="What was wrong"
                hint="asked for where something written is replaced"
              />
            </FieldGroup>
          ) : (
            <Seldom
              title="It was sown long ago, and only the record is missing"
              open={field("sown").refusals.length > 0 || field("sown").value !== ""}
            >
              <p className="quiet measure">
                For a grow-out of an old notebook: no seed leaves a jar by what is written here. Seed that is sown now
                is booked where it is sown.
              </p>
              <SownFields field={field} />
            </Seldom>
          )}
        </PlanFields>
      )}
    </LotForm>
  );
}

function SownFields({ field }: { field: FieldOf }) {
  return (
    <SideBySide>
      <DateField {...field("sown")} label="Sown" />
      <NumberField {...field("seedsSown")} label="Seeds sown" unit="seeds" whole />
    </SideBySide>
  );
}

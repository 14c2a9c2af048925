"use client";

import { type Option, Select, TextField } from "@/components/ui";
import { FieldGroup, LotForm, SideBySide } from "../../lots/_form/lot-form";
import { makePlan } from "../_actions/plan";
import { PlanFields, type PlanOffers, planLabels } from "../_form/plan-fields";

/** A plan of a grow-out. */
export function PlanForm({
  varietyId,
  start,
  offers,
  plots,
}: {
  varietyId: string;
  start: Readonly<Record<string, string>>;
  offers: PlanOffers;
  plots: readonly Option[];
}) {
  return (
    <LotForm
      draft={`grow-out:new:${varietyId}`}
      deed={makePlan.bind(null, varietyId)}
      start={start}
      labels={planLabels}
      submit="Plan it"
      back="/grow-outs"
      standing="This is an entry in the records: nothing leaves a jar by it, and History can take it back."
    >
      {(field) => (
        <PlanFields field={field} offers={offers} parentsTitle="Which lots are to be sown">
          <FieldGroup title="Where it will stand">
            <SideBySide>
              {plots.length > 0 ? <Select {...field("plot")} label="Plot" options={plots} empty="not said" /> : null}
              <TextField
                {...field("newPlot")}
                label={plots.length > 0 ? "or a new plot" : "Plot"}
                hint="as you call it"
              />
              <TextField {...field("place")} label="its rough place" hint="the village will do" />
            </SideBySide>
          </FieldGroup>
        </PlanFields>
      )}
    </LotForm>
  );
}

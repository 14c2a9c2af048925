"use client";

import { DateField, NumberField, type Option, Select, TextField } from "@/components/ui";
import { LotForm, SideBySide } from "../../lots/_form/lot-form";
import { enterNeighbour, putNeighbourRight } from "../_actions/neighbours";
import { bearingOptions, evidenceOptions, privacyHint } from "./choices";

const labels = {
  what: "What grows there",
  crop: "Crop",
  variety: "Variety",
  plot: "Seen from which plot",
  distance: "How far off",
  bearing: "On which side",
  sizeM2: "How large",
  plants: "or how many plants",
  windowFirst: "In flower from",
  windowLast: "to",
  howSure: "How it is known",
};

/** A neighbour source, new or as it stands. */
export function NeighbourForm({
  growOutId,
  neighbourId,
  start,
  crops,
  varieties,
  plots,
  lengthUnit,
}: {
  growOutId: string;
  neighbourId?: string;
  start: Readonly<Record<string, string>>;
  crops: readonly Option[];
  varieties: readonly Option[];
  /** where there is more than one, the plot that it was seen from is asked for */
  plots: readonly Option[];
  lengthUnit: string;
}) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:neighbour:${neighbourId ?? "new"}`}
      deed={neighbourId ? putNeighbourRight.bind(null, growOutId, neighbourId) : enterNeighbour.bind(null, growOutId)}
      start={start}
      labels={labels}
      submit={neighbourId ? "Put it right" : "Write it down"}
      back={`/grow-outs/${growOutId}/neighbours`}
      standing="An entry in the records: History can take it back. What is not known stays empty: it is not assessed, never taken for far away."
    >
      {(field) => (
        <>
          <TextField
            {...field("what")}
            label={labels.what}
            hint={`the plants, as “sweet maize” or “wild carrot on the verge”; ${privacyHint}`}
            required
          />
          <SideBySide>
            <Select
              {...field("crop")}
              label={labels.crop}
              hint="for wild kin of the same species choose the crop itself"
              options={crops}
              empty="not known"
            />
            <Select {...field("variety")} label={labels.variety} options={varieties} empty="not one of ours" />
          </SideBySide>
          <SideBySide>
            <NumberField
              {...field("distance")}
              label={labels.distance}
              hint="from edge to edge, by steps or by a map"
              unit={lengthUnit}
            />
            <Select
              {...field("bearing")}
              label={labels.bearing}
              hint="seen from the plot"
              options={bearingOptions}
              empty="not known"
            />
          </SideBySide>
          <SideBySide>
            <NumberField
              {...field("sizeM2")}
              label={labels.sizeM2}
              hint="100 by 100 m are 10,000 m², a hectare"
              unit="m²"
            />
            <NumberField {...field("plants")} label={labels.plants} unit="plants" whole />
          </SideBySide>
          <SideBySide>
            <DateField {...field("windowFirst")} label={labels.windowFirst} hint="as told: 2026-07-12, or 2026-07" />
            <DateField
              {...field("windowLast")}
              label={labels.windowLast}
              hint="what you see yourself goes under its flowering"
            />
          </SideBySide>
          {plots.length > 1 ? <Select {...field("plot")} label={labels.plot} options={plots} empty="not said" /> : null}
          <Select {...field("howSure")} label={labels.howSure} options={evidenceOptions} empty="not written" />
          <TextField
            {...field("note")}
            label="Note"
            lines={2}
            hint="wood or hedge between, hives, what was agreed; no name of a person need stand here"
          />
        </>
      )}
    </LotForm>
  );
}

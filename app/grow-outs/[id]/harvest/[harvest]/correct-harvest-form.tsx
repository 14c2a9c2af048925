"use client";

import { TextField } from "@/components/ui";
import { LotForm } from "../../../../lots/_form/lot-form";
import { putHarvestRight } from "../../../_actions/harvest";
import { harvestLabels } from "../../../_harvest/harvest-choices";
import { HarvestFields, type HarvestGround } from "../../../_harvest/harvest-fields";

/** A harvest as it should have been entered. */
export function CorrectHarvestForm({
  growOutId,
  harvestId,
  start,
  ground,
}: {
  growOutId: string;
  harvestId: string;
  start: Readonly<Record<string, string>>;
  ground: HarvestGround;
}) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:harvest:${harvestId}`}
      deed={putHarvestRight.bind(null, harvestId)}
      start={start}
      labels={harvestLabels}
      submit="Put the harvest right"
      back={`/grow-outs/${growOutId}#harvested`}
      standing="What stood here stays to be read in the history, and the ledger keeps the old entry beside the new one."
    >
      {(field) => (
        <HarvestFields field={field} ground={ground} start={start}>
          <TextField {...field("reason")} label="What was wrong" required />
        </HarvestFields>
      )}
    </LotForm>
  );
}

"use client";

import { type Option, TextField } from "@/components/ui";
import { HolderFields } from "../../../lots/_form/holder-fields";
import { LotForm, SideBySide } from "../../../lots/_form/lot-form";
import { enterHarvest, enterHarvestOfField } from "../../_actions/harvest";
import { harvestLabels } from "../../_harvest/harvest-choices";
import { HarvestFields, type HarvestGround } from "../../_harvest/harvest-fields";

/** A harvest, which makes a lot. */
export function HarvestForm({
  growOutId,
  sentId,
  start,
  ground,
  stewards,
}: {
  growOutId: string;
  /** the record of the field that is entered by it */
  sentId?: string | undefined;
  start: Readonly<Record<string, string>>;
  ground: HarvestGround;
  stewards: readonly Option[];
}) {
  return (
    <LotForm
      draft={sentId ? `grow-out:${growOutId}:harvest:${sentId}` : `grow-out:${growOutId}:harvest`}
      deed={sentId ? enterHarvestOfField.bind(null, growOutId, sentId) : enterHarvest.bind(null, growOutId)}
      start={start}
      labels={harvestLabels}
      submit="Enter the harvest"
      back={`/grow-outs/${growOutId}`}
      standing="This is an entry in the records: it can be put right, and History can take it back. Seed that was tipped together stays together all the same."
    >
      {(field) => (
        <HarvestFields field={field} ground={ground} start={start}>
          <SideBySide>
            <TextField
              {...field("number")}
              label="Lot number"
              hint="given once and for life; left empty, its label code is its number"
            />
          </SideBySide>
          <HolderFields field={field} stewards={stewards} />
        </HarvestFields>
      )}
    </LotForm>
  );
}

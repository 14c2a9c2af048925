import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readHarvests } from "@/lib/registry/harvests/read-harvests";
import { current } from "../../../../_session/current";
import { unitsOf } from "../../../../lots/_words/units-of";
import { groundOf, startOfCorrection } from "../../../_harvest/harvest-start";
import { GrowOutPageHead } from "../../_components/grow-out-page-head";
import { CorrectHarvestForm } from "./correct-harvest-form";

export const metadata: Metadata = { title: "Put a harvest right" };

export default async function CorrectHarvest({ params }: { params: Promise<{ id: string; harvest: string }> }) {
  const { db, settings, today } = await current("record");
  const { id, harvest: harvestId } = await params;
  const read = await readHarvests(db, id, today);
  const harvest = read?.harvests.find((each) => each.id === harvestId);
  if (!read || !harvest) notFound();
  const units = unitsOf(settings);
  return (
    <div className="sheet stack">
      <GrowOutPageHead
        growOut={read.growOut}
        variety={{ ...read.variety, cropKey: read.crop.key }}
        title={harvest.lotNumber === null ? "Put a harvest right" : `Put the harvest of lot ${harvest.lotNumber} right`}
      >
        What really happened, as it should have been written. Its number and its holder are put right on the lot itself.
      </GrowOutPageHead>
      <CorrectHarvestForm
        growOutId={id}
        harvestId={harvestId}
        start={startOfCorrection(read, harvest, units)}
        ground={groundOf(read, units)}
      />
    </div>
  );
}

import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { readHarvests } from "@/lib/registry/harvests/read-harvests";
import { current } from "../../../../../_session/current";
import { unitsOf } from "../../../../../lots/_words/units-of";
import { EvennessView } from "../../../../_harvest/evenness-view";
import { namedAmounts } from "../../../../_harvest/harvest-words";
import { GrowOutPageHead } from "../../../_components/grow-out-page-head";
import { TogetherForm } from "./together-form";

export const metadata: Metadata = { title: "Put bags together" };

export default async function PutTogetherPage({ params }: { params: Promise<{ id: string; harvest: string }> }) {
  const { db, settings, today } = await current("record");
  const { id, harvest: harvestId } = await params;
  const read = await readHarvests(db, id, today);
  const harvest = read?.harvests.find((each) => each.id === harvestId);
  if (!read || !harvest) notFound();
  const unit = { unit: harvest.given?.unit ?? "g", units: unitsOf(settings) } as const;
  const named = namedAmounts(harvest);
  const { evenness } = harvest;
  return (
    <div className="sheet stack">
      <GrowOutPageHead
        growOut={read.growOut}
        variety={{ ...read.variety, cropKey: read.crop.key }}
        title={`Put the bags of lot ${harvest.lotNumber ?? "not on record"} together`}
      >
        The bags of one harvest become one jar. Five seeds of each plant already carry nearly all that it has; what
        counts is that all plants are in the jar alike.
      </GrowOutPageHead>
      {harvest.bulked === "kept apart" && evenness && harvest.lotNumber !== null ? (
        <>
          <EvennessView even={evenness} named={named} unit={unit} done={false} inbreeding={read.plot.inbreeding} />
          <TogetherForm
            growOutId={id}
            harvestId={harvestId}
            lot={harvest.lotNumber}
            today={today}
            even={evenness}
            named={named}
            plot={read.plot}
            detasselled={harvest.detasselled}
            unit={unit}
          />
        </>
      ) : (
        <Notice title="There is nothing to put together">
          <p>
            {harvest.bulked === "kept apart"
              ? "A bag of it was not measured: "
              : "It lies in one jar already. If that is wrong, "}
            <Way href={`/grow-outs/${id}/harvest/${harvestId}`}>put the harvest right</Way>.
          </p>
        </Notice>
      )}
    </div>
  );
}

import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { weight } from "@/lib/display/units";
import { readDrying } from "@/lib/registry/drying/read-drying";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../../_session/current";
import { LotPageHead } from "../../../_parts/lot-page-head";
import { percentRead, standingOfDrying, targetOf } from "../../../_words/drying-words";
import { unitsOf } from "../../../_words/units-of";
import { DriedForm } from "../drying-forms";

export const metadata: Metadata = { title: "Weigh dried seed" };

export default async function WeighDried({ params }: { params: Promise<{ id: string; drying: string }> }) {
  const { db, settings, today } = await current("desk");
  const { id, drying: dryingId } = await params;
  const lot = await readHead(db.read, id);
  const drying = lot ? (await readDrying(db, lot.id)).dryings.find((each) => each.id === dryingId) : undefined;
  if (!lot || !drying) notFound();
  const units = unitsOf(settings);
  const target = targetOf(drying);
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="Weigh it again">
        Laid out {dateInWords(drying.on)}: {weight(drying.startGrams, units)} at{" "}
        {percentRead(drying.startPercent) ?? "unknown moisture"}.{" "}
        {target === null
          ? ""
          : `It is dry enough, at ${percentRead(drying.targetPercent)}, when it weighs ${weight(target, units)}.`}
      </LotPageHead>
      <Cautions step="store" crop={lot.crop.cropKey} cropName={lot.crop.commonName} />
      {drying.endGrams === null ? (
        <DriedForm lotId={lot.id} dryingId={drying.id} today={today} units={units} />
      ) : (
        <Notice title="This drying is over">
          <p>
            {standingOfDrying(drying, units)}. <Way href={`/lots/${lot.id}/dry`}>Back to the dryings</Way>
          </p>
        </Notice>
      )}
    </div>
  );
}

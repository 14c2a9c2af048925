import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { readSowing } from "@/lib/registry/grow-outs/read-sowing";
import { current } from "../../../_session/current";
import { unitsOf } from "../../../lots/_words/units-of";
import { crossOption, lotOption } from "../../_words/lot-words";
import { GrowOutPageHead } from "../_components/grow-out-page-head";
import { SowForm } from "./sow-form";

export const metadata: Metadata = { title: "Sow a grow-out" };

export default async function SowGrowOut({ params }: { params: Promise<{ id: string }> }) {
  const { db, settings, today } = await current("record");
  const sowing = await readSowing(db, (await params).id, { settings, today });
  if (!sowing) notFound();
  const { growOut, variety, parents } = sowing;
  const units = unitsOf(settings);
  const over = growOut.endedOn !== null || growOut.outcome !== null;
  const treated = parents
    .map(({ lot }) => lot)
    .find((lot) => lot.treatment === "chemical" || lot.treatment === "unknown");
  return (
    <div className="sheet stack">
      <GrowOutPageHead growOut={growOut} variety={variety} title={growOut.sown === null ? "Sow it" : "Sow more of it"}>
        Seed that is sown leaves its jar: each lot’s ledger is written with it.
      </GrowOutPageHead>
      {over ? (
        <Notice title="This grow-out is over">
          <p>
            Nothing more is sown into it. <Way href={`/grow-outs/new?variety=${variety.id}`}>Plan a new one</Way>, or{" "}
            <Way href={`/grow-outs/${growOut.id}/end`}>say that it still stands</Way>.
          </p>
        </Notice>
      ) : (
        <>
          {growOut.sown === null ? null : (
            <Notice title={`It was sown ${dateInWords(growOut.sown)}`}>
              <p>What is written here is a further sowing: the first day stays, and the seeds add up.</p>
            </Notice>
          )}
          <Cautions
            step="sow"
            crop={variety.cropKey}
            treatment={treated?.treatment ?? null}
            substance={treated?.treatmentSubstance ?? null}
          />
          <SowForm
            growOut={{
              id: growOut.id,
              name: growOut.name,
              sown: growOut.sown !== null,
              plantsPlanned: growOut.plantsPlanned,
            }}
            parents={parents}
            lots={sowing.lots}
            options={[...sowing.lots.map((lot) => lotOption(lot, units)), ...sowing.crosses.map(crossOption)]}
            units={units}
            today={today}
          />
        </>
      )}
    </div>
  );
}

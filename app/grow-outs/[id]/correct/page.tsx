import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readPlanGround } from "@/lib/registry/grow-outs/read-plan-ground";
import { current } from "../../../_session/current";
import { unitsOf } from "../../../lots/_words/units-of";
import { fieldsOfGrowOut } from "../../_form/fields-of-grow-out";
import { offersOf } from "../../_form/plan-offers";
import { GrowOutPageHead } from "../_components/grow-out-page-head";
import { growOutOfPage } from "../read";
import { CorrectForm } from "./correct-form";

export const metadata: Metadata = { title: "Put a grow-out right" };

export default async function CorrectGrowOut({ params }: { params: Promise<{ id: string }> }) {
  const { db, settings, today } = await current("correct");
  const read = await growOutOfPage((await params).id);
  const ground = read && (await readPlanGround(db, read.variety.id, { settings, today }));
  if (!read || !ground) notFound();
  const { growOut, variety } = read;
  const sown = growOut.sown !== null;
  return (
    <div className="sheet stack">
      <GrowOutPageHead
        growOut={growOut}
        variety={{ ...variety, cropKey: variety.crop.key }}
        title={sown ? "Put its record right" : "Put its plan right"}
      >
        {sown
          ? "This puts right what is written. It moves no seed: an amount in a ledger is put right in that ledger."
          : "Nothing is sown yet, so everything of the plan may change."}
      </GrowOutPageHead>
      <CorrectForm
        growOutId={growOut.id}
        start={fieldsOfGrowOut(read)}
        offers={offersOf(ground, unitsOf(settings))}
        sown={sown}
      />
    </div>
  );
}

import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { listed } from "@/lib/display/plurals";
import { endOfOutcome } from "@/lib/registry/grow-outs/end-grow-out";
import { standingOf } from "@/lib/registry/grow-outs/life-of-grow-out";
import { current } from "../../../_session/current";
import { endOptions } from "../../_words/choices";
import { GrowOutPageHead } from "../_components/grow-out-page-head";
import { growOutOfPage } from "../read";
import { EndForm } from "./end-form";

export const metadata: Metadata = { title: "The end of a grow-out" };

export default async function EndGrowOut({ params }: { params: Promise<{ id: string }> }) {
  const { today } = await current("record");
  const read = await growOutOfPage((await params).id);
  if (!read) notFound();
  const { growOut, variety, harvested } = read;
  const over = growOut.endedOn !== null || growOut.outcome !== null;
  const stands = standingOf(read, today);
  const written = endOfOutcome(growOut.outcome);
  const start = {
    end: written?.end ?? (growOut.outcome === null && (over || harvested.length > 0) ? "seed kept" : ""),
    endedOn: growOut.endedOn ?? (stands.stage === "standing" ? today : ""),
    cause: written?.cause ?? (written === null ? (growOut.outcome ?? "") : ""),
  };
  return (
    <div className="sheet stack">
      <GrowOutPageHead growOut={growOut} variety={{ ...variety, cropKey: variety.crop.key }} title="How it ended">
        {harvested.length > 0
          ? `On record from it: lot ${listed(harvested.map((lot) => lot.number))}.`
          : "No lot is on record from it."}
      </GrowOutPageHead>
      {harvested.length === 0 ? (
        <Notice title="Was seed kept?">
          <p>
            Then <Way href={`/grow-outs/${growOut.id}/harvest`}>enter the harvest</Way> first, so that the seed has its
            number. If it failed: sow of what is left half at most, this year only where the season allows, and ask the
            circle before the last seed goes into the ground.
          </p>
        </Notice>
      ) : null}
      <EndForm growOutId={growOut.id} start={start} options={endOptions(stands.stage !== "planned", over)} />
    </div>
  );
}

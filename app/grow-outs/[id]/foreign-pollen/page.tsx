import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { percent } from "@/lib/display/numbers";
import { current } from "../../../_session/current";
import { GrowOutPageHead } from "../_components/grow-out-page-head";
import { growOutOfPage } from "../read";
import { ForeignPollenForm } from "./foreign-pollen-form";

export const metadata: Metadata = { title: "Foreign pollen" };

export default async function ForeignPollenPage({ params }: { params: Promise<{ id: string }> }) {
  await current("record");
  const { id } = await params;
  const read = await growOutOfPage(id);
  if (!read) notFound();
  const { growOut, variety } = read;
  const stands = growOut.foreignPollen;
  return (
    <div className="sheet stack">
      <GrowOutPageHead growOut={growOut} variety={{ ...variety, cropKey: variety.crop.key }} title="Foreign pollen">
        {stands === null
          ? "How much of the seed had a father outside the variety, and how that was found. Until somebody says so it is computed as none."
          : `So far: ${percent(stands)}${growOut.foreignPollenHow ? `, ${growOut.foreignPollenHow}` : ""}.`}
      </GrowOutPageHead>
      <p className="measure">
        Take seed from many plants, from the margin and the middle apart: the margin shows far more. A mark that is
        recessive, or that the variety has too, shows nothing.{" "}
        <Link href="/methods#foreign-pollen-seen">How the share is worked out of a count</Link>.
      </p>
      <ForeignPollenForm growOutId={id} replaces={stands !== null} />
    </div>
  );
}

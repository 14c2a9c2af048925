import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { readTraitHead } from "@/lib/registry/traits/read-trait-head";
import { current } from "../../../../_session/current";
import { defineThisTrait } from "../_form/trait-deeds";
import { TraitForm } from "../_form/trait-form";

export const metadata: Metadata = { title: "Define a trait" };

export default async function NewTraitPage({ params }: { params: Promise<{ id: string }> }) {
  const { db } = await current("record");
  const { id } = await params;
  const variety = await readTraitHead(db, id);
  if (!variety) notFound();
  return (
    <div className="sheet stack">
      <PageHead title="Define a trait" kind={<Link href={`/varieties/${id}`}>{variety.name}</Link>}>
        <p className="measure">
          Scales run both ways in the trade, and some are neither good nor bad: say which end is good, and what the
          steps mean, before anybody scores by it.
        </p>
      </PageHead>
      <TraitForm
        draft={`trait-new:${id}`}
        deed={defineThisTrait.bind(null, id)}
        start={{ kind: "scale", scope: "variety", scaleLow: "1", scaleHigh: "9" }}
        submit="Define the trait"
        back={`/varieties/${id}/traits`}
        crop={variety.crop}
        standing="This is an entry in the records: History can take it back."
      />
    </div>
  );
}

import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { varietyOf } from "@/lib/registry/varieties/variety-of";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { storeCorrection } from "../../_actions/correct";
import { RecordForm } from "../../_forms/record-form";
import { varietyFields } from "../../_words/variety-fields";

export const metadata: Metadata = { title: "Correct a variety" };

export default async function CorrectVariety({ params }: { params: Promise<{ id: string }> }) {
  const { db } = await current("correct");
  const { id } = await params;
  const found = await varietyOf(db.read, id);
  if (!found.ok) notFound();
  const variety = found.value;
  const coat = storedSeedCoat(variety.seedCoat);
  return (
    <div className="sheet stack">
      <PageHead
        title={`Correct ${variety.name}`}
        kind="Variety"
        mark={coat ? <SeedCoat name={variety.name} coat={coat} size={44} /> : undefined}
      />
      <RecordForm
        fields={varietyFields(variety)}
        corrects
        action={storeCorrection.bind(null, id)}
        confirm="Store the correction"
        back={{ href: `/varieties/${id}`, words: "Leave it as it is" }}
      />
    </div>
  );
}

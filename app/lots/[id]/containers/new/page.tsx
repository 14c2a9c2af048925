import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../../_session/current";
import { LotPageHead } from "../../../_parts/lot-page-head";
import { ContainerForm } from "../container-form";

export const metadata: Metadata = { title: "A container" };

export default async function NewContainer({ params }: { params: Promise<{ id: string }> }) {
  const { db } = await current("desk");
  const lot = await readHead(db.read, (await params).id);
  if (!lot) notFound();
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="A container">
        In what part of this lot is kept, and where. One lot may stand in several.
      </LotPageHead>
      <Cautions step="store" crop={lot.crop.cropKey} treatment={lot.treatment} substance={lot.treatmentSubstance} />
      <ContainerForm lotId={lot.id} start={{ unit: "g" }} />
    </div>
  );
}

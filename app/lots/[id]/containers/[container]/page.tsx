import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { readContainer } from "@/lib/registry/containers/read-container";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../../_session/current";
import { fieldsOfContainer } from "../../../_form/fields-of-container";
import { LotPageHead } from "../../../_parts/lot-page-head";
import { ContainerForm } from "../container-form";

export const metadata: Metadata = { title: "A container" };

export default async function ChangeContainer({ params }: { params: Promise<{ id: string; container: string }> }) {
  const { db } = await current("desk");
  const { id, container: containerId } = await params;
  const lot = await readHead(db.read, id);
  const container = await readContainer(db.read, id, containerId);
  if (!lot || !container) notFound();
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title={`Container ${container.code}`} />
      <Cautions step="store" crop={lot.crop.cropKey} treatment={lot.treatment} substance={lot.treatmentSubstance} />
      <ContainerForm lotId={id} containerId={containerId} start={fieldsOfContainer(container)} />
    </div>
  );
}

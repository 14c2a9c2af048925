import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { roleMay } from "@/lib/access/permissions";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { current } from "../../../_session/current";
import { HistoryOf } from "../../../history/_components/history-of";
import { RecordForm } from "../../../varieties/_forms/record-form";
import { storeStewardCorrection } from "../../_actions/store";
import { Forget } from "../../_components/forget";
import { stewardFields } from "../../_words/steward-fields";

export const metadata: Metadata = { title: "A steward" };

export default async function CorrectSteward({ params }: { params: Promise<{ id: string }> }) {
  const { db, actor } = await current("correct-at-desk");
  const { id } = await params;
  const steward = (await listStewards(db)).find((each) => each.id === id);
  if (!steward) notFound();
  return (
    <div className="sheet stack">
      <PageHead title={steward.name ?? "A steward"} kind="Steward" />
      <RecordForm
        fields={stewardFields(steward)}
        corrects
        action={storeStewardCorrection.bind(null, id)}
        confirm="Store the correction"
        back={{ href: "/stewards", words: "Back to the stewards" }}
      />
      {steward.name !== null && roleMay(actor.role, "erase") ? <Forget stewardId={id} name={steward.name} /> : null}
      <HistoryOf ids={[id]} asOf={id} />
    </div>
  );
}

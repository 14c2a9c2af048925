import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { readFounders } from "@/lib/registry/kinships/read-founders";
import { current } from "../../../../_session/current";
import { HistoryOf } from "../../../../history/_components/history-of";
import { CorrectKinshipForm, DropKinshipForm } from "../kinship-forms";

export const metadata: Metadata = { title: "Two founders" };

export default async function KinshipOfTwo({ params }: { params: Promise<{ id: string; kinship: string }> }) {
  const { db } = await current("correct");
  const { id, kinship: kinshipId } = await params;
  const read = await readFounders(db, id);
  const kinship = read?.kinships.find((each) => each.id === kinshipId);
  if (!read || !kinship) notFound();
  const { kind, coancestry, how } = kinship;
  return (
    <div className="sheet stack">
      <PageHead title={`${kinship.first} and ${kinship.second}`} kind={read.variety.name} />
      <Section id="correct" title="Put it right">
        <CorrectKinshipForm
          varietyId={id}
          kinshipId={kinshipId}
          start={{ kind, how, coancestry: coancestry === null ? "" : String(coancestry) }}
        />
      </Section>
      <Section id="drop" title="Take it away">
        <DropKinshipForm varietyId={id} kinshipId={kinshipId} />
      </Section>
      <HistoryOf ids={[kinshipId]} />
    </div>
  );
}

import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { ButtonLink, Steps } from "@/components/ui";
import { changeTitle } from "@/lib/display/change-title";
import { readChangeSet } from "@/lib/registry/history/read-change-set";
import { current } from "../../../_session/current";
import { importSteps } from "../../_components/steps";

export const metadata: Metadata = { title: "Brought in" };

export default async function BroughtIn({ params }: { params: Promise<{ changeSet: string }> }) {
  const { db } = await current("import");
  const changeSet = await readChangeSet(db, (await params).changeSet);
  if (!changeSet) notFound();
  return (
    <div className="sheet stack">
      <PageHead title="Brought in" kind="Bring files in">
        <p className="lead measure">{changeTitle(changeSet.title)}.</p>
      </PageHead>
      <Steps steps={importSteps} now={2} />
      <p className="row">
        <ButtonLink href="/lots" kind="chief">
          To the lots
        </ButtonLink>
        <ButtonLink href="/season">What waits for a hand</ButtonLink>
        <ButtonLink href={`/history/${changeSet.id}`}>Take it back</ButtonLink>
      </p>
    </div>
  );
}

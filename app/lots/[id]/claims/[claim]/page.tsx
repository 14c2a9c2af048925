import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Section } from "@/components/frame";
import { readClaims } from "@/lib/registry/claims/read-claims";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../../_session/current";
import { LotPageHead } from "../../../_parts/lot-page-head";
import { claimInShort, standsInWords, toldBy } from "../../../_words/claim-words";
import { CorrectClaimForm, JudgeForm } from "./claim-forms";

export const metadata: Metadata = { title: "What was told" };

export default async function ClaimPage({ params }: { params: Promise<{ id: string; claim: string }> }) {
  const { db } = await current("correct");
  const { id, claim: claimId } = await params;
  const lot = await readHead(db.read, id);
  const claim = lot && (await readClaims(db, lot.id)).find((each) => each.id === claimId);
  if (!lot || !claim) notFound();
  const text = (value: string | number | null) => (value === null ? "" : String(value));
  const start = {
    kind: claim.kind,
    parent: text(claim.parent),
    generationsFirst: text(claim.generationsFirst),
    generationsLast: text(claim.generationsLast),
    words: claim.words,
    teller: text(claim.teller),
    toldOn: text(claim.toldOn),
    howSure: text(claim.howSure),
    story: text(claim.story),
  };
  const judged = { standing: claim.standing, reason: text(claim.standingReason) };
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title={claimInShort(claim)}>
        “{claim.words}”, {toldBy(claim)}. It is {standsInWords(claim)}.
      </LotPageHead>
      <Section id="judge" title="How it stands">
        <JudgeForm lotId={lot.id} claimId={claim.id} start={judged} />
      </Section>
      <Section id="correct" title="Put it right">
        <CorrectClaimForm lotId={lot.id} claimId={claim.id} start={start} founder={lot.kind === "founder"} />
      </Section>
    </div>
  );
}

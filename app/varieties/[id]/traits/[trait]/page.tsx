import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { SimpleTable } from "@/components/tables";
import { AskTwice } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { directionInWords, stepsInWords, traitKindInWords } from "@/lib/display/scores";
import { listTraits } from "@/lib/registry/traits/list-traits";
import { readTraitHead } from "@/lib/registry/traits/read-trait-head";
import { traitTexts } from "@/lib/schemas/traits/trait-form";
import { current } from "../../../../_session/current";
import { Pictures } from "../../../../pictures/_parts/pictures";
import { changeThisTrait, takeTraitAway } from "../_form/trait-deeds";
import { TraitForm } from "../_form/trait-form";
import { scopeWords } from "../_form/trait-words";

export const metadata: Metadata = { title: "A trait" };

const columns = [
  { key: "version", name: "Version" },
  { key: "kind", name: "How it is told" },
  { key: "good", name: "Which end is good" },
  { key: "steps", name: "What the steps mean" },
  { key: "scores", name: "Scores of this variety", kind: "count" },
] as const;

export default async function TraitPage({ params }: { params: Promise<{ id: string; trait: string }> }) {
  const { db } = await current("correct");
  const { id, trait: traitId } = await params;
  const variety = await readTraitHead(db, id);
  const trait = variety ? (await listTraits(db, id)).find((each) => each.newest.id === traitId) : undefined;
  if (!variety || !trait) notFound();
  const used = trait.scoresInAll > 0;
  return (
    <div className="sheet stack">
      <PageHead title={trait.newest.name} kind={<Link href={`/varieties/${id}/traits`}>Traits of {variety.name}</Link>}>
        <p className="measure">
          For {scopeWords[trait.scope]}.{" "}
          {used
            ? `${counted(trait.scoresInAll, "score")} ${trait.scoresInAll === 1 ? "was" : "were"} given by it: a change makes version ${trait.newest.version + 1}, and they keep the version that they were given by.`
            : "Nobody has scored by it yet, so it can be changed as it stands."}
        </p>
      </PageHead>
      <TraitForm
        draft={`trait:${traitId}`}
        deed={changeThisTrait.bind(null, id, traitId)}
        start={traitTexts(trait.newest, trait.scope)}
        submit={used ? `Make version ${trait.newest.version + 1}` : "Change it"}
        back={`/varieties/${id}/traits`}
        crop={null}
        standing="A new name alone is a correction: it is that of every version. History can take either back."
      />
      {trait.versions.length > 1 ? (
        <Section id="versions" title="Its versions">
          <SimpleTable
            columns={columns}
            entries
            rows={trait.versions.map((version) => ({
              id: version.id,
              cells: {
                version: version.version,
                kind: traitKindInWords(version),
                good: version.direction === null ? "not said" : directionInWords(version),
                steps: stepsInWords(version),
                scores: trait.scores.get(version.id) ?? 0,
              },
            }))}
          />
        </Section>
      ) : null}
      <Pictures
        subject={{ kind: "trait", id: traitId, varietyId: id }}
        of={`${trait.newest.name} of ${variety.name}`}
        none="One for each step, so that two people score alike."
      />
      {used || trait.versions.length > 1 ? null : (
        <AskTwice
          button="Take it away"
          buttonKind="quiet"
          title={`Take ${trait.newest.name} away?`}
          says={<p>Nobody has scored by it.</p>}
          confirm="Take it away"
          kind="entry"
          action={takeTraitAway.bind(null, id, traitId)}
        />
      )}
    </div>
  );
}

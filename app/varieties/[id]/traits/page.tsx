import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import { SimpleTable } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { counted } from "@/lib/display/plurals";
import { directionInWords, stepsInWords, traitKindInWords } from "@/lib/display/scores";
import { type ListedTrait, listTraits } from "@/lib/registry/traits/list-traits";
import { readTraitHead } from "@/lib/registry/traits/read-trait-head";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { scopeWords } from "./_form/trait-words";

export const metadata: Metadata = { title: "Traits of a variety" };

const columns = [
  { key: "name", name: "Trait" },
  { key: "kind", name: "How it is told" },
  { key: "good", name: "Which end is good" },
  { key: "steps", name: "What the steps mean" },
  { key: "for", name: "For" },
  { key: "scores", name: "Scores of this variety", kind: "count" },
] as const;

export default async function TraitsPage({ params }: { params: Promise<{ id: string }> }) {
  const { db } = await current();
  const { id } = await params;
  const variety = await readTraitHead(db, id);
  if (!variety) notFound();
  const traits = await listTraits(db, id);
  const own = traits.filter((trait) => trait.scope !== "all" || scoresHere(trait) > 0);
  const others = traits.filter((trait) => !own.includes(trait));
  return (
    <div className="sheet stack">
      <PageHead
        title="Traits"
        kind={<Link href={`/varieties/${id}`}>{variety.name}</Link>}
        mark={<SeedCoat name={variety.name} crop={variety.cropKey} coat={storedSeedCoat(variety.seedCoat)} size={56} />}
        figure={
          <Figure value={own.length === 0 ? "No trait" : counted(own.length, "trait")}>
            {own.length === 0 ? "is defined for its plants yet. " : "for its plants. "}
            Four to six are enough: more, and nobody fills them in the rain.
          </Figure>
        }
        actions={
          <>
            {traits.some((trait) => scoresHere(trait) > 0) ? (
              <ButtonLink href={`/varieties/${id}/traits/years`}>Over the years</ButtonLink>
            ) : null}
            <ButtonLink href={`/varieties/${id}/traits/new`}>Define a trait</ButtonLink>
          </>
        }
      />
      <Section id="traits" title="What its plants are scored by">
        {own.length === 0 ? (
          <p className="quiet">Say first what is looked at, how it is told, and which end is good.</p>
        ) : (
          <TraitTable traits={own} varietyId={id} />
        )}
      </Section>
      {others.length > 0 ? (
        <Section id="shared" title="Shared by all varieties, not scored here yet">
          <TraitTable traits={others} varietyId={id} />
        </Section>
      ) : null}
    </div>
  );
}

function scoresHere(trait: ListedTrait): number {
  return [...trait.scores.values()].reduce((sum, count) => sum + count, 0);
}

function TraitTable({ traits, varietyId }: { traits: readonly ListedTrait[]; varietyId: string }) {
  return (
    <SimpleTable
      columns={columns}
      entries
      rows={traits.map((trait) => ({
        id: trait.id,
        cells: {
          name: (
            <Way href={`/varieties/${varietyId}/traits/${trait.newest.id}`} otherwise={trait.newest.name}>
              {trait.newest.name}
            </Way>
          ),
          kind: traitKindInWords(trait.newest),
          good: trait.newest.direction === null ? "not said" : directionInWords(trait.newest),
          steps: stepsInWords(trait.newest),
          for: scopeWords[trait.scope],
          scores: scoresInWords(trait),
        },
      }))}
    />
  );
}

/** How many scores there are, and of how many an older version is the measure. */
function scoresInWords(trait: ListedTrait): string {
  const older = trait.versions.slice(0, -1).flatMap((version) => {
    const count = trait.scores.get(version.id) ?? 0;
    return count > 0 ? [`${count} by version ${version.version}`] : [];
  });
  return [String(scoresHere(trait)), ...older].join(", ");
}

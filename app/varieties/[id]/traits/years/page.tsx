import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { Button, Select } from "@/components/ui";
import { directionInWords } from "@/lib/display/scores";
import { historyOfTrait } from "@/lib/registry/traits/history-of-trait";
import { readTraitHead } from "@/lib/registry/traits/read-trait-head";
import { readTraitYears } from "@/lib/registry/traits/read-trait-years";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../../_session/current";
import { AgainstCheck } from "./against-check";
import { EachYear } from "./each-year";
import { OffTypeYears } from "./off-type-years";
import { WhatStayed } from "./what-stayed";

export const metadata: Metadata = { title: "Traits over the years" };

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<{ trait?: string; check?: string }> };

export default async function TraitYearsPage({ params, searchParams }: Parameters) {
  const { db } = await current();
  const { id } = await params;
  const { trait: asked, check: checkId } = await searchParams;
  const variety = await readTraitHead(db, id);
  const read = await readTraitYears(db, id, asked ?? null);
  if (!variety || !read) notFound();
  const { trait } = read;
  const history = historyOfTrait(read, checkId ?? null);
  return (
    <div className="sheet stack">
      <PageHead
        title={trait ? `${capital(trait.newest.name)} over the years` : "Traits over the years"}
        kind={
          <>
            <Link href={`/varieties/${id}/traits`}>Traits</Link> of{" "}
            <Link href={`/varieties/${id}`}>{variety.name}</Link>
          </>
        }
        mark={<SeedCoat name={variety.name} crop={variety.cropKey} coat={storedSeedCoat(variety.seedCoat)} size={56} />}
      >
        <p className="measure">
          {trait
            ? `${capital(directionInWords(trait.newest))}. A year’s mean is the weather, the place and the scorer as much as the variety: only what stood beside it in the same year tells them apart.`
            : "None of its plants was scored yet."}
        </p>
      </PageHead>
      {read.traits.length > 1 || read.checks.length > 0 ? (
        <form className="row not-on-paper" action={`/varieties/${id}/traits/years`}>
          <Select
            name="trait"
            label="Trait"
            required
            value={trait?.id}
            options={read.traits.map((line) => ({ value: line.id, words: line.newest.name }))}
          />
          {read.checks.length > 0 ? (
            <Select
              name="check"
              label="Beside which check"
              required
              value={history?.check?.varietyId ?? "none"}
              options={[
                { value: "none", words: "none" },
                ...read.checks.map(({ varietyId, variety: name, years }) => ({
                  value: varietyId,
                  words: `${name}, ${years.length === 1 ? "one year" : `${years.length} years`} in common`,
                })),
              ]}
            />
          ) : null}
          <Button type="submit">Show</Button>
        </form>
      ) : null}
      {history ? (
        <>
          <Section id="years" title="Each year">
            <EachYear trait={history.trait} points={history.points} type={history.type} />
          </Section>
          <Section id="check" title="The variety, or the weather">
            <AgainstCheck history={history} />
          </Section>
          <Section id="stayed" title="What stayed of the choice">
            <WhatStayed trait={history.trait} cycles={history.cycles} />
          </Section>
        </>
      ) : null}
      <Section id="off-types" title="Off-types by year">
        <OffTypeYears passes={read.passes} variety={variety.name} />
      </Section>
    </div>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

import type { Metadata } from "next";
import Link from "next/link";
import type { ReactNode } from "react";
import { Cautions } from "@/components/cautions";
import { PageHead } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import type { SearchParameters } from "@/components/tables";
import { ButtonLink, Notice } from "@/components/ui";
import { listed } from "@/lib/display/plurals";
import { namesForForms } from "@/lib/registry/lots/names-for-forms";
import { readBlendGround } from "@/lib/registry/lots/read-blend-ground";
import { type BlendSubject, readBlendSubject } from "@/lib/registry/lots/read-blend-subject";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../_session/current";
import { OfRecord } from "../../_session/of-record";
import { unitsOf } from "../_words/units-of";
import { Blending } from "./_components/blending";

export const metadata: Metadata = { title: "Blend lots" };

export default async function BlendLots({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db, settings, today } = await current("record");
  const { lots, variety, grams } = await searchParams;
  const subject = await readBlendSubject(db, {
    lots: [lots ?? []]
      .flat()
      .flatMap((each) => each.split(","))
      .filter((each) => each !== ""),
    varietyId: typeof variety === "string" ? variety : null,
  });
  if (!subject) return <ChooseVariety />;
  const { head, cropId, asked, others } = subject;
  const ground = await readBlendGround(db, { varietyId: head.varietyId, cropId, asked });
  const { stewards } = await namesForForms(db);
  const page = (
    <div className="sheet stack">
      <Heading subject={subject} />
      {others.length > 0 ? (
        <Notice title={`Not lot ${listed(others)}`}>
          <p>A blend is of one variety. To cross two, sow both in one grow-out.</p>
        </Notice>
      ) : null}
      <Cautions
        step="blend"
        crop={head.crop.cropKey}
        cropName={head.crop.commonName}
        cropCautions={head.crop.cropCautions}
        varietyName={head.variety}
        varietyCautions={head.varietyCautions}
      />
      {ground.lots.length < 2 || head.crop.clonal ? (
        <NothingToBlend subject={subject} lots={ground.lots.length} />
      ) : (
        <Blending
          ground={ground}
          about={{
            varietyId: head.varietyId,
            variety: head.variety,
            matingSystem: head.crop.matingSystem,
            usualLifeYears: head.crop.seedLifeYearsMax,
          }}
          asked={asked}
          amounts={amountsAsked(lots, grams)}
          stewards={stewards}
          units={unitsOf(settings)}
          today={today}
        />
      )}
    </div>
  );
  const records =
    asked.length > 0
      ? asked.map((id) => ({ page: "/lots/[id]" as const, id, at: `/lots/blend?lots=${id}` }))
      : [{ page: "/varieties/[id]" as const, id: head.varietyId }];
  return records.reduce<ReactNode>(
    (inside, record) => (
      <OfRecord key={record.id} {...record}>
        {inside}
      </OfRecord>
    ),
    page,
  );
}

/** Grams by lot as the address asks for them, in the order of its lots; what is no weight is left out. */
function amountsAsked(
  lots: SearchParameters[string],
  grams: SearchParameters[string],
): Readonly<Record<string, number>> {
  const named = [lots ?? []].flat().flatMap((each) => each.split(","));
  const weights = [grams ?? []].flat().flatMap((each) => each.split(","));
  return Object.fromEntries(
    named.flatMap((id, place) => {
      const weight = Number(weights[place] || Number.NaN);
      return Number.isFinite(weight) && weight > 0 ? [[id, weight]] : [];
    }),
  );
}

function Heading({ subject: { head } }: { subject: BlendSubject }) {
  return (
    <PageHead
      title="Blend lots"
      kind={<Link href={`/varieties/${head.varietyId}`}>{head.variety}</Link>}
      mark={<SeedCoat name={head.variety} crop={head.crop.cropKey} coat={storedSeedCoat(head.seedCoat)} size={48} />}
    >
      <p className="measure">
        An old lot for breadth, a young one for vigour, in equal living seeds: that is a good blend. Keep some of each
        unmixed, for a blend is never parted again.
      </p>
    </PageHead>
  );
}

function NothingToBlend({ subject: { head }, lots }: { subject: BlendSubject; lots: number }) {
  return (
    <Notice
      title="Nothing to mix"
      actions={<ButtonLink href={`/varieties/${head.varietyId}`}>Back to {head.variety}</ButtonLink>}
    >
      <p>
        {head.crop.clonal
          ? `${head.crop.commonName} is kept by division: mixed, nobody can tell its clones from each other again. Keep its lots apart.`
          : lots === 1
            ? "Only one lot of it holds seed. A blend takes two."
            : "No lot of it holds seed on record."}
      </p>
    </Notice>
  );
}

function ChooseVariety() {
  return (
    <div className="sheet stack">
      <PageHead title="Blend lots" />
      <Notice
        title="Lots of one variety are mixed"
        actions={
          <>
            <ButtonLink href="/varieties">Choose a variety</ButtonLink>
            <ButtonLink href="/lots">Choose a lot</ButtonLink>
          </>
        }
      >
        <p>Go to the variety, or to one of its jars: from there its lots can be blended.</p>
      </Notice>
    </div>
  );
}

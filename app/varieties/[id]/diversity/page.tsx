import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { DescentOverYears } from "@/components/charts";
import { PageHead, Section } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { ListTable, type SearchParameters } from "@/components/tables";
import { Notice } from "@/components/ui";
import { counted, listed } from "@/lib/display/plurals";
import { type DiversityRead, readDiversity } from "@/lib/registry/varieties/read-diversity";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { whyNotKept } from "../../_words/kept-words";
import { withoutYear } from "../../_words/years";
import { Ways } from "../_components/ways";
import { varietyOfPage } from "../read";
import { Bottlenecks } from "./_components/bottlenecks";
import { ChooseLot } from "./_components/choose-lot";
import { FiguresOfLot } from "./_components/figures-of-lot";
import { KeptFigure } from "./_components/kept-figure";
import { Stretches } from "./_components/stretches";
import { columns, pointsOf, rowsOf } from "./_words/rows";

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<SearchParameters> };

export async function generateMetadata({ params }: Parameters): Promise<Metadata> {
  const read = await varietyOfPage((await params).id);
  return { title: read ? `Diversity kept of ${read.variety.name}` : "Diversity kept" };
}

export default async function DiversityOfVariety({ params, searchParams }: Parameters) {
  const { db } = await current();
  const { id } = await params;
  const asked = await searchParams;
  const read = await varietyOfPage(id);
  if (!read) notFound();
  const found = await readDiversity(db, read, typeof asked.lot === "string" ? asked.lot : null);
  const { variety, crop, lots } = read;
  return (
    <div className="sheet stack">
      <PageHead
        title="Diversity kept"
        kind={<Link href={`/varieties/${id}`}>{variety.name}</Link>}
        mark={<SeedCoat name={variety.name} crop={crop.key} coat={storedSeedCoat(variety.seedCoat)} size={56} />}
        figure={<KeptFigure lot={found.lot} clonal={crop.clonal} />}
      />
      <Ways varietyId={id} here="diversity" />
      {lots.length === 0 || crop.clonal ? null : <Whole read={read} found={found} parameters={asked} />}
    </div>
  );
}

function Whole({
  read,
  found: { lot, growOuts, stretches, lines },
  parameters,
}: {
  read: VarietyRead;
  found: DiversityRead;
  parameters: SearchParameters;
}) {
  const { id } = read.variety;
  const points = pointsOf(read);
  const told = points.some(({ value, low }) => value !== null || low !== null);
  const undated = withoutYear(read.lots);
  const why = [...new Set(read.lots.flatMap((each) => whyNotKept(each.standing) ?? []))];
  return (
    <>
      {told ? (
        <Section id="years" title="Through the years">
          <DescentOverYears title="Its own diversity kept" points={points} lines={lines} chosen={lot?.id ?? null}>
            Each lot by the year of its harvest, tied to the lots that it came of.
            {undated > 0 ? ` ${counted(undated, "lot")} of unknown year ${undated === 1 ? "is" : "are"} left out.` : ""}
            {points.some(({ foreign }) => foreign) ? " A thorn is foreign pollen, which is not counted as a gain." : ""}
          </DescentOverYears>
        </Section>
      ) : null}
      {why.length > 0 ? (
        <Notice title="Why there is no figure everywhere">
          {why.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Notice>
      ) : null}
      {lot ? (
        <Section
          id="lot"
          title={
            <>
              Lot <Link href={`/lots/${lot.id}`}>{lot.number}</Link>
            </>
          }
          aside={<ChooseLot lots={read.lots} chosen={lot.id} />}
        >
          <div className="stack">
            <FiguresOfLot lot={lot} />
            <Founders lot={lot} />
          </div>
        </Section>
      ) : null}
      {lot && growOuts.length > 0 ? <Bottlenecks lot={lot} growOuts={growOuts} /> : null}
      {stretches.length > 0 ? <Stretches stretches={stretches} /> : null}
      <Section id="lots" title="Every lot">
        <ListTable
          caption={`Lots of ${read.variety.name}`}
          noun="lot"
          columns={columns}
          rows={rowsOf(read)}
          path={`/varieties/${id}/diversity`}
          parameters={parameters}
          filterLabel="Find a lot"
          csv={`/varieties/${id}/diversity/csv`}
        />
      </Section>
    </>
  );
}

/** Where its figures are measured from, and that its founders may be kin. */
function Founders({ lot }: { lot: NonNullable<DiversityRead["lot"]> }) {
  const founders = lot.figures?.founders ?? [];
  const since = lot.figures?.span?.since ?? [];
  return (
    <>
      {founders.length > 1 ? (
        <p>
          It goes back to {listed(founders)}.{" "}
          {lot.figures?.span
            ? "Where nobody wrote how they are related, the span reaches from unrelated to near kin."
            : "They are counted as unrelated unless somebody wrote how near they are; if they are kin, less is kept than these figures say."}
        </p>
      ) : null}
      {since.length > 0 ? (
        <p>
          Measured since {listed(since.map(({ name }) => name))}: of the plants before, nothing was written that would
          bound what they passed on.
        </p>
      ) : null}
    </>
  );
}

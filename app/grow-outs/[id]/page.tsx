import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import type { SearchParameters } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { effectiveSize, wholeNumber } from "@/lib/display/numbers";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../_session/current";
import { HistoryOf } from "../../history/_components/history-of";
import { unitsOf } from "../../lots/_words/units-of";
import { sizeExplanation } from "../_words/size-explanation";
import { EventsSection } from "./_components/events-section";
import { HowGrown } from "./_components/how-grown";
import { LotsSown, LotsTaken } from "./_components/lots-in-and-out";
import { PlantsSection } from "./_components/plants-section";
import { growOutOfPage } from "./read";

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<SearchParameters> };

export async function generateMetadata({ params }: Parameters): Promise<Metadata> {
  const read = await growOutOfPage((await params).id);
  return { title: read ? `${read.growOut.name}, grow-out of ${read.variety.name}` : "A grow-out" };
}

export default async function GrowOutPage({ params, searchParams }: Parameters) {
  const { settings } = await current();
  const { id } = await params;
  const read = await growOutOfPage(id);
  if (!read) notFound();
  const { growOut, variety } = read;
  const units = unitsOf(settings);
  return (
    <div className="sheet stack">
      <PageHead
        title={growOut.name}
        kind={
          <>
            Grow-out of <Link href={`/varieties/${variety.id}`}>{variety.name}</Link>
          </>
        }
        mark={
          <SeedCoat name={variety.name} crop={variety.crop.key} coat={storedSeedCoat(variety.seedCoat)} size={56} />
        }
        figure={<SizeFigure read={read} />}
      />
      <div className="beside">
        <div className="stack">
          <LotsSown read={read} />
          <LotsTaken read={read} units={units} />
        </div>
        <HowGrown read={read} />
      </div>
      <EventsSection read={read} units={units} />
      <PlantsSection read={read} units={units} parameters={await searchParams} />
      {growOut.note ? (
        <Section id="note" title="Note">
          <p className="told">{growOut.note}</p>
        </Section>
      ) : null}
      <HistoryOf ids={[id]} asOf={id} />
    </div>
  );
}

/** The effective size and what it means; for a crop kept by division, why there is none. */
function SizeFigure({ read }: { read: GrowOutRead }) {
  const { growOut, harvested, variety } = read;
  const sown = growOut.sown === null ? "" : `Sown ${dateInWords(growOut.sown)}. `;
  if (variety.crop.clonal) {
    return (
      <Figure value={growOut.plantsStanding === null ? "unknown" : wholeNumber(growOut.plantsStanding)}>
        plants stood. {sown}The crop is kept by division, so no seed mixed them and there is no effective size.
      </Figure>
    );
  }
  if (harvested.length === 0) {
    return (
      <Figure value="no seed">
        came of it on record. {sown}
        {growOut.outcome ?? "Nobody wrote why."}
      </Figure>
    );
  }
  const size = harvested[0]?.figures?.effectiveSize ?? null;
  const floor = variety.crop.plantsMin;
  const narrow = size !== null && floor !== null && size < floor;
  const against =
    floor === null
      ? ""
      : narrow
        ? ` The crop’s floor is ${floor}: it was a bottleneck.`
        : ` The crop’s floor is ${floor}.`;
  return (
    <Figure value={effectiveSize(size)} waiting={narrow} explanation={sizeExplanation(read)}>
      {size === null
        ? `is what this grow-out counts as, in plants that all gave alike. ${sown}What is missing is written below.`
        : `plants that all gave alike would have passed on as much. ${sown}${against}`}
    </Figure>
  );
}

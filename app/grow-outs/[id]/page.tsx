import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import type { SearchParameters } from "@/components/tables";
import { lifeOfGrowOut } from "@/lib/registry/grow-outs/life-of-grow-out";
import { nextOfGrowOut } from "@/lib/registry/grow-outs/next-of-grow-out";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../_session/current";
import { HistoryOf } from "../../history/_components/history-of";
import { unitsOf } from "../../lots/_words/units-of";
import { Pictures } from "../../pictures/_parts/pictures";
import { HowGrown } from "./_components/how-grown";
import { LifeSection } from "./_components/life-section";
import { LotsSown } from "./_components/lots-in-and-out";
import { NextSteps } from "./_components/next-steps";
import { SizeFigure } from "./_components/size-figure";
import { TakeToField } from "./_components/take-to-field";
import { WaitsFromField } from "./_components/waits-from-field";
import { CountsOfGrowOut } from "./_sections/counts-of-grow-out";
import { HarvestsOfGrowOut } from "./_sections/harvests-of-grow-out";
import { NeighboursOfGrowOut } from "./_sections/neighbours-of-grow-out";
import { PlantsOfGrowOut } from "./_sections/plants-of-grow-out";
import { growOutOfPage } from "./read";

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<SearchParameters> };

export async function generateMetadata({ params }: Parameters): Promise<Metadata> {
  const read = await growOutOfPage((await params).id);
  return { title: read ? `${read.growOut.name}, grow-out of ${read.variety.name}` : "A grow-out" };
}

export default async function GrowOutPage({ params, searchParams }: Parameters) {
  const { settings, today } = await current();
  const { id } = await params;
  const read = await growOutOfPage(id);
  if (!read) notFound();
  const { growOut, variety } = read;
  const life = lifeOfGrowOut(read, today, settings.hemisphere);
  const planned = life.stands.stage === "planned";
  const next = nextOfGrowOut(read, life, today);
  const section = { read, units: unitsOf(settings), today, parameters: await searchParams };
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
        figure={<SizeFigure read={read} life={life} />}
        actions={<TakeToField growOutId={id} name={growOut.name} />}
      />
      {next.length > 0 ? <NextSteps growOutId={id} next={next} /> : null}
      <WaitsFromField growOutId={id} asked={read.asked} />
      <LifeSection read={read} life={life} today={today} />
      <div className="beside">
        <LotsSown read={read} units={section.units} />
        <HowGrown read={read} planned={planned} />
      </div>
      {planned ? null : (
        <>
          <CountsOfGrowOut {...section} />
          <PlantsOfGrowOut {...section} />
          <HarvestsOfGrowOut {...section} />
        </>
      )}
      <NeighboursOfGrowOut {...section} />
      <Pictures
        subject={{ kind: "grow-out", id }}
        of={`grow-out ${growOut.name}`}
        none="The rows in flower, a marked plant, an off-type."
      />
      {next.length > 0 ? null : <NextSteps growOutId={id} next={next} />}
      {growOut.note ? (
        <Section id="note" title="Note">
          <p className="told">{growOut.note}</p>
        </Section>
      ) : null}
      <HistoryOf ids={[id, ...read.events.map((event) => event.id)]} asOf={id} />
    </div>
  );
}

import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import { ButtonLink, Notice } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../_session/current";
import { HistoryOf } from "../../history/_components/history-of";
import { unitsOf } from "../../lots/_words/units-of";
import { Pictures } from "../../pictures/_parts/pictures";
import { aimWords } from "../_words/aim-words";
import { placesExplanation } from "../_words/explanations";
import { GrowOutsSection } from "./_components/grow-outs-section";
import { HoldersSection } from "./_components/holders-section";
import { LotsSection } from "./_components/lots-section";
import { NamesSection, StrainsSection } from "./_components/names-section";
import { StorySection } from "./_components/story-section";
import { TypeSection } from "./_components/type-section";
import { WaitsSection } from "./_components/waits-section";
import { Ways } from "./_components/ways";
import { YearsSection } from "./_components/years-section";
import { varietyOfPage } from "./read";

type Parameters = { params: Promise<{ id: string }> };

export async function generateMetadata({ params }: Parameters): Promise<Metadata> {
  const read = await varietyOfPage((await params).id);
  return { title: read?.variety.name ?? "A variety" };
}

export default async function VarietyPage({ params }: Parameters) {
  const { settings } = await current();
  const { id } = await params;
  const read = await varietyOfPage(id);
  if (!read) notFound();
  const { variety, crop } = read;
  const places = read.holders.reduce((sum, holder) => sum + (holder.confirmed ? holder.places : 0), 0);
  const ids = [
    id,
    ...[read.otherNames, read.traits, read.strains, read.stories].flatMap((rows) => rows.map((row) => row.id)),
  ];
  return (
    <div className="sheet stack">
      <PageHead
        title={variety.name}
        kind={<a href={`/crops/${encodeURIComponent(crop.key)}`}>{crop.commonName}</a>}
        mark={
          <SeedCoat
            name={variety.name}
            crop={crop.key}
            coat={storedSeedCoat(variety.seedCoat)}
            size={72}
            label={`Seed-coat mark of ${variety.name}`}
          />
        }
        figure={
          <Figure
            value={places === 0 ? "No place" : counted(places, "place")}
            waiting={places < 2}
            explanation={placesExplanation(read, settings)}
          >
            {placesSentence(read, places)}
          </Figure>
        }
        actions={
          <>
            <ButtonLink href={`/lots/new?variety=${id}`}>Enter a lot of it</ButtonLink>
            <ButtonLink href={`/varieties/${id}/correct`}>Correct</ButtonLink>
            <ButtonLink href={`/varieties/${id}/mark`} kind="quiet">
              Choose its mark
            </ButtonLink>
          </>
        }
      >
        {variety.aim ? (
          <p>
            Kept {aimWords[variety.aim]?.words}: {aimWords[variety.aim]?.note}.
          </p>
        ) : null}
      </PageHead>
      <Ways varietyId={id} />
      {variety.cautions ? (
        <Notice kind="caution" title="Cautions">
          <p>{variety.cautions} Your local rules stand above this.</p>
        </Notice>
      ) : null}
      <WaitsSection read={read} />
      <div className="beside even">
        <StorySection read={read} />
        <TypeSection read={read} />
      </div>
      <Pictures subject={{ kind: "variety", id }} of={variety.name} none="A pod, a plant, the seed in a hand." />
      <LotsSection read={read} units={unitsOf(settings)} renewal={settings.renewalPlan} />
      <YearsSection read={read} renewal={settings.renewalPlan} />
      <GrowOutsSection read={read} />
      <HoldersSection read={read} settings={settings} />
      <div className="beside even">
        <NamesSection read={read} />
        <StrainsSection read={read} />
      </div>
      <HistoryOf ids={ids} asOf={id} />
    </div>
  );
}

function placesSentence({ holders }: VarietyRead, places: number): string {
  if (holders.length === 0) return "has seed of it on record.";
  const open = holders.filter((holder) => !holder.confirmed && holder.why !== "said no").length;
  const rest =
    open === 0
      ? ""
      : ` ${counted(open, "holder")}${places === 0 ? "" : " more"} ${open === 1 ? "does" : "do"} not count.`;
  return `${places > 1 ? "hold" : "holds"} seed of it for certain.${rest}`;
}

import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { Explained, Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import type { SearchParameters } from "@/components/tables";
import { ButtonLink, Notice } from "@/components/ui";
import { plainNumber } from "@/lib/display/numbers";
import { readLot } from "@/lib/registry/lots/read-lot";
import { current } from "../../_session/current";
import { CautionsOfCrop, CautionsOfLot } from "../_parts/cautions";
import { ContainersOfLot } from "../_parts/containers-of-lot";
import { JarAnswers } from "../_parts/jar-answers";
import { KinOfLotPart } from "../_parts/kin-of-lot";
import { LedgerTable } from "../_parts/ledger-table";
import { Particulars } from "../_parts/particulars";
import { ReserveParts } from "../_parts/reserve-parts";
import { TestsOfLot } from "../_parts/tests-of-lot";
import { matterInWords, openMatters, ToldOfLot, weighingsInWords } from "../_parts/told-of-lot";
import { diversityExplanation, diversityInWords, diversitySentence } from "../_words/explain-lineage";
import { giveExplanation } from "../_words/explain-reserve";
import { giveInWords } from "../_words/give-in-words";
import { storedCoat } from "../_words/stored-coat";
import { unitsOf } from "../_words/units-of";

interface Props {
  params: Promise<{ id: string }>;
  searchParams: Promise<SearchParameters>;
}

export const metadata: Metadata = { title: "Lot" };

export default async function LotPage({ params, searchParams }: Props) {
  const { db, settings, today } = await current();
  const { plants } = await searchParams;
  const asked = typeof plants === "string" && /^[1-9]\d{0,5}$/.test(plants.trim()) ? Number(plants) : null;
  const read = await readLot(db, (await params).id, { settings, today, plants: asked });
  if (!read) notFound();
  const { lot } = read;
  const units = unitsOf(settings);
  const give = giveInWords(read, settings);
  const matters = openMatters(read.notes);
  const diversity = diversityExplanation(read);
  const weighings = weighingsInWords(read.notes);
  return (
    <div className="sheet">
      <PageHead
        kind={<Link href={`/varieties/${lot.varietyId}`}>{lot.variety}</Link>}
        title={`Lot ${lot.number}`}
        mark={<SeedCoat name={lot.variety} crop={lot.crop.cropKey} coat={storedCoat(lot.seedCoat)} size={64} />}
        figure={
          <Figure value={give.figure} waiting={give.waiting} explanation={giveExplanation(read, settings)}>
            {give.sentence}
          </Figure>
        }
        actions={
          <>
            <ButtonLink href={`/lots/${lot.id}/ledger/new`} kind="chief">
              Write into the ledger
            </ButtonLink>
            <ButtonLink href={`/tests/new?lot=${lot.id}`}>Test it</ButtonLink>
            <ButtonLink href={`/lots/${lot.id}/correct`} kind="quiet">
              Put it right
            </ButtonLink>
          </>
        }
      />
      <div className="stack">
        {matters.length > 0 ? (
          <Notice kind="waiting" title="Waits for somebody">
            {matters.map((note) => (
              <p key={note.id}>{matterInWords(note)}</p>
            ))}
          </Notice>
        ) : null}
        <CautionsOfLot lot={lot} />
      </div>
      <Section id="jar" title="The jar">
        <div className="stack">
          <JarAnswers read={read} settings={settings} units={units} today={today} />
          <CautionsOfCrop lot={lot} />
        </div>
      </Section>
      <Section id="reserve" title="Kept back">
        <ReserveParts read={read} settings={settings} />
      </Section>
      <Section id="ledger" title="Ledger" aside={<Link href={`/lots/${lot.id}/ledger/new`}>one more entry</Link>}>
        {read.balance.steps.length > 0 ? (
          <LedgerTable read={read} units={units} />
        ) : (
          <p className="quiet">
            No entry yet: how much is in it nobody knows. Weigh the jar and write that down first.
          </p>
        )}
      </Section>
      <Section id="tests" title="Germination tests" aside={<Link href={`/tests/new?lot=${lot.id}`}>a new test</Link>}>
        {read.tests.length > 0 ? (
          <TestsOfLot read={read} settings={settings} />
        ) : (
          <p className="quiet">Never tested. Twenty seeds in a damp cloth would tell.</p>
        )}
      </Section>
      <Section id="lineage" title="Where it comes from, what came of it">
        <div className="stack">
          {diversity ? (
            <Explained explanation={diversity}>
              {diversityInWords(read)} {read.standing === "counted" ? diversitySentence(read) : ""}
            </Explained>
          ) : null}
          {read.standing === "counted" ? null : <p>{diversitySentence(read)}</p>}
          <KinOfLotPart read={read} />
        </div>
      </Section>
      <Section
        id="seed-weight"
        title="Seed weight"
        aside={<Link href={`/lots/${lot.id}/weigh`}>count and weigh seeds</Link>}
      >
        <p>
          {lot.thousandSeedGrams === null
            ? "Nobody has counted and weighed its seeds: grams cannot be turned into seeds exactly."
            : `A thousand seeds weigh ${plainNumber(lot.thousandSeedGrams, 2)} g: ${plainNumber(1000 / lot.thousandSeedGrams, 2)} seeds in a gram.`}
        </p>
        {weighings.map((weighing) => (
          <p key={weighing.id} className="counts quiet">
            {weighing.words}
          </p>
        ))}
      </Section>
      <Section
        id="containers"
        title="Containers and places"
        aside={<Link href={`/lots/${lot.id}/containers/new`}>one more container</Link>}
      >
        <ContainersOfLot read={read} units={units} />
      </Section>
      <Section id="told" title="What is told of it">
        <ToldOfLot read={read} />
      </Section>
      <Section
        id="particulars"
        title="What is written of it"
        aside={<Link href={`/lots/${lot.id}/history`}>who wrote what, and when</Link>}
      >
        <Particulars lot={lot} />
      </Section>
    </div>
  );
}

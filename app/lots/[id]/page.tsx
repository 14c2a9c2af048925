import type { Metadata } from "next";
import Link from "next/link";
import { notFound, redirect } from "next/navigation";
import { cache } from "react";
import { Cautions } from "@/components/cautions";
import { Section } from "@/components/frame";
import type { SearchParameters } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { kOfN } from "@/lib/display/numbers";
import { type LotRead, readLot } from "@/lib/registry/lots/read-lot";
import { isEmpty } from "@/lib/registry/transfers/after-giving";
import { current } from "../../_session/current";
import { Pictures } from "../../pictures/_parts/pictures";
import { ContainersOfLot } from "../_parts/containers-of-lot";
import { HarvestOfLot } from "../_parts/harvest-of-lot";
import { JarAnswers } from "../_parts/jar-answers";
import { LedgerTable } from "../_parts/ledger-table";
import { LineageOfLot } from "../_parts/lineage-of-lot";
import { LotHeading } from "../_parts/lot-head";
import { OpenMatters } from "../_parts/open-matters";
import { OtherRecords } from "../_parts/other-records";
import { Particulars } from "../_parts/particulars";
import { ReserveParts } from "../_parts/reserve-parts";
import { SeedWeight } from "../_parts/seed-weight";
import { TestsOfLot } from "../_parts/tests-of-lot";
import { ToldOfLot } from "../_parts/told-of-lot";
import { unitsOf } from "../_words/units-of";

interface Props {
  params: Promise<{ id: string }>;
  searchParams: Promise<SearchParameters>;
}

// Read once for the page and its title.
const lotOf = cache(async (id: string, plants: number | null) => {
  const { db, settings, today } = await current();
  return readLot(db, id, { settings, today, plants });
});

async function asked({ params, searchParams }: Props) {
  const { plants } = await searchParams;
  const wanted = typeof plants === "string" && /^[1-9]\d{0,5}$/.test(plants.trim()) ? Number(plants) : null;
  return lotOf((await params).id, wanted);
}

export async function generateMetadata(props: Props): Promise<Metadata> {
  const read = await asked(props);
  return { title: read ? `Lot ${read.lot.number}` : "No such lot" };
}

export default async function LotPage(props: Props) {
  const { settings, today } = await current();
  const read = await asked(props);
  if (!read) notFound();
  const { lot } = read;
  // The address of another record of the lot leads to the one that stands for both.
  if (lot.id !== (await props.params).id) redirect(`/lots/${lot.id}`);
  const units = unitsOf(settings);
  const at = `/lots/${lot.id}`;
  const empty = isEmpty(read.figures?.gramsOnHand ?? null, lot.thousandSeedGrams);
  return (
    <div className="sheet">
      <LotHeading read={read} settings={settings} />
      <div className="stack">
        <OpenMatters notes={read.notes} />
        {empty ? null : (
          <Cautions
            step="jar"
            crop={lot.crop.cropKey}
            cropName={lot.crop.commonName}
            cropCautions={lot.crop.cropCautions}
            varietyName={lot.variety}
            varietyCautions={lot.varietyCautions}
            treatment={lot.treatment}
            substance={lot.treatmentSubstance}
          />
        )}
      </div>
      <Section id="jar" title="The jar" aside={empty ? null : <JarActs at={at} lotId={lot.id} />}>
        <JarAnswers read={read} settings={settings} units={units} today={today} />
      </Section>
      <Section id="reserve" title="Kept back">
        <ReserveParts read={read} settings={settings} />
      </Section>
      <Section id="ledger" title="Ledger" aside={<LedgerLinks at={at} entries={read.entries.length} />}>
        {read.balance.steps.length > 0 ? (
          <LedgerTable read={read} units={units} />
        ) : (
          <p className="quiet">
            No entry yet: how much is in it nobody knows. Weigh the jar and write that down first.
          </p>
        )}
      </Section>
      <Section id="tests" title="Germination tests" aside={<Way href={`/tests/new?lot=${lot.id}`}>a new test</Way>}>
        {read.tests.length > 0 ? (
          <TestsOfLot read={read} settings={settings} />
        ) : (
          <NeverTested before={read.testedBefore} />
        )}
      </Section>
      <Section
        id="lineage"
        title="Where it comes from, what came of it"
        aside={<Link href={`/varieties/${lot.varietyId}/lineage?lot=${lot.id}`}>trace it on the stem chart</Link>}
      >
        <LineageOfLot read={read} />
      </Section>
      <HarvestOfLot lot={lot} units={units} />
      <Section
        id="seed-weight"
        title="Seed weight"
        aside={
          <>
            <Way href={`${at}/weigh`}>count and weigh seeds</Way>
            <Way before=", " href={`${at}/dry`}>
              dry it
            </Way>
          </>
        }
      >
        <SeedWeight read={read} />
      </Section>
      <Section
        id="containers"
        title="Containers and places"
        aside={
          <>
            <Way href={`${at}/containers/new`} after={read.containers.length > 0 ? ", " : ""}>
              one more container
            </Way>
            {read.containers.length > 0 ? (
              <a href={`${at}/containers/csv`} download>
                as CSV
              </a>
            ) : null}
          </>
        }
      >
        <ContainersOfLot read={read} units={units} />
      </Section>
      <Section id="told" title="What is told of it">
        <ToldOfLot read={read} />
      </Section>
      <Pictures
        subject={{ kind: "lot", id: lot.id }}
        of={`lot ${lot.number}`}
        none="The seed beside a coin, the old packet, the line in the book."
      />
      <Section
        id="particulars"
        title="What is written of it"
        aside={
          <>
            <Way href={`${at}/status`}>move it on</Way>
            <Way before=", " href={`${at}/history`}>
              who wrote what, and when
            </Way>
          </>
        }
      >
        <div className="stack">
          <Particulars lot={lot} />
          <OtherRecords read={read} />
        </div>
      </Section>
    </div>
  );
}

function NeverTested({ before }: { before: LotRead["testedBefore"] }) {
  const would = "Twenty seeds in a damp cloth would tell.";
  if (before === null) return <p className="quiet">Never tested. {would}</p>;
  const { number, test } = before;
  return (
    <p className="quiet measure">
      Not tested under this number. Of {number}, from which it was split,{" "}
      <Link href={`/tests/${test.testId}`}>{kOfN(test.normal, test.sown)}</Link> came up, {dateInWords(test.date)}.{" "}
      {would}
    </p>
  );
}

function JarActs({ at, lotId }: { at: string; lotId: string }) {
  return (
    <>
      <Way href={`${at}/split`}>split it</Way>
      <Way before=", " href={`/lots/blend?lots=${lotId}`}>
        blend it with another lot
      </Way>
    </>
  );
}

function LedgerLinks({ at, entries }: { at: string; entries: number }) {
  return (
    <>
      <Way href={`${at}/ledger/new`} after={entries > 0 ? ", " : ""}>
        one more entry
      </Way>
      {entries > 0 ? (
        <a href={`${at}/ledger/csv`} download>
          as CSV
        </a>
      ) : null}
    </>
  );
}

import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { Section } from "@/components/frame";
import { SimpleTable } from "@/components/tables";
import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { type UnitSettings, weight } from "@/lib/display/units";
import { type DryingRead, readDrying } from "@/lib/registry/drying/read-drying";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../_session/current";
import { LotPageHead } from "../../_parts/lot-page-head";
import { percentRead, readingWords, standingOfDrying } from "../../_words/drying-words";
import { unitsOf, weightAsTyped } from "../../_words/units-of";
import { LayOutForm } from "./drying-forms";

export const metadata: Metadata = { title: "Dry a lot" };

const readingColumns = [
  { key: "on", name: "When" },
  { key: "percent", name: "Moisture", kind: "count" },
  { key: "words", name: "Read" },
] as const;

const dryingColumns = [
  { key: "on", name: "Laid out" },
  { key: "start", name: "Weighed", kind: "count" },
  { key: "from", name: "Moisture", kind: "count" },
  { key: "now", name: "And now" },
] as const;

export default async function DryLot({ params }: { params: Promise<{ id: string }> }) {
  const { db, settings, today } = await current("desk");
  const lot = await readHead(db.read, (await params).id);
  if (!lot) notFound();
  const drying = await readDrying(db, lot.id);
  const units = unitsOf(settings);
  const last = drying.readings.findLast((reading) => reading.percent !== null);
  const ended = drying.dryings.findLast((each) => each.endGrams !== null)?.endGrams ?? null;
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="Dry it">
        Thin layers in moving air, one to four weeks. The dry matter stays the same, so the scales alone tell when it is
        dry enough.
      </LotPageHead>
      <Cautions
        step="dry"
        crop={lot.crop.cropKey}
        cropName={lot.crop.commonName}
        treatment={lot.treatment}
        substance={lot.treatmentSubstance}
      />
      {lot.crop.dryStorage ? (
        <Section id="dryings" title="Laid out to dry">
          <div className="stack">
            {drying.dryings.length > 0 ? (
              <DryingTable at={`/lots/${lot.id}/dry`} dryings={drying.dryings} units={units} />
            ) : null}
            <div className="stack-near">
              <h3>{drying.dryings.length === 0 ? "Lay it out" : "Lay out more of it"}</h3>
              <LayOutForm
                lotId={lot.id}
                units={units}
                start={{
                  on: today,
                  startGrams: ended === null ? "" : weightAsTyped(ended, units),
                  startPercent: last?.percent == null ? "" : String(last.percent),
                  targetPercent: "",
                }}
              />
            </div>
          </div>
        </Section>
      ) : (
        <Notice kind="caution" title="This seed dies when it is dried">
          <p>Keep it moist and sow it soon. What holds for your crop stands in its profile.</p>
        </Notice>
      )}
      <Section
        id="moisture"
        title="How moist it is"
        aside={<Way href={`/lots/${lot.id}/dry/moisture`}>one more reading</Way>}
      >
        {drying.readings.length > 0 ? (
          <ReadingTable readings={drying.readings} units={units} />
        ) : (
          <p className="quiet">
            Nobody has read it. A bean that breaks rather than dents and a squash seed that snaps are a sign, no number.
          </p>
        )}
      </Section>
      <p>
        Dry and cool enough? <Way href={`/lots/${lot.id}/containers/new`}>Put it into a container</Way>, and{" "}
        <Way href={`/lots/${lot.id}/weigh`}>count and weigh its seeds</Way>.
      </p>
    </div>
  );
}

function DryingTable({ at, dryings, units }: { at: string; dryings: DryingRead["dryings"]; units: UnitSettings }) {
  return (
    <SimpleTable
      columns={dryingColumns}
      rows={dryings.map((each) => ({
        id: each.id,
        cells: {
          on: dateInWords(each.on),
          start: weight(each.startGrams, units),
          from: `${percentRead(each.startPercent) ?? "unknown"} to ${percentRead(each.targetPercent) ?? "unknown"}`,
          now: (
            <>
              {[standingOfDrying(each, units), each.note ?? ""].filter(Boolean).join("; ")}
              {each.endGrams === null ? (
                <>
                  {". "}
                  <Link href={`${at}/${each.id}`}>Weigh it again</Link>
                </>
              ) : null}
            </>
          ),
        },
      }))}
    />
  );
}

function ReadingTable({ readings, units }: { readings: DryingRead["readings"]; units: UnitSettings }) {
  return (
    <SimpleTable
      columns={readingColumns}
      rows={readings.map((reading) => ({
        id: reading.id,
        cells: {
          on: dateInWords(reading.on),
          percent: percentRead(reading.percent) ?? "",
          words: readingWords(reading, units),
        },
      }))}
    />
  );
}

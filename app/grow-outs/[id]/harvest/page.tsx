import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { Notice } from "@/components/ui";
import { counted, listed } from "@/lib/display/plurals";
import { readSentHarvest } from "@/lib/registry/field/enter-sent-harvest";
import { readHarvests } from "@/lib/registry/harvests/read-harvests";
import { namesForForms } from "@/lib/registry/lots/names-for-forms";
import { numbersBeginning } from "@/lib/registry/notebook-typing/typing-ground";
import { current } from "../../../_session/current";
import { unitsOf } from "../../../lots/_words/units-of";
import { highestNumber, stemOf } from "../../../type-in/_lines/lot-numbers";
import { groundOf, startOfHarvest, startOfSentHarvest } from "../../_harvest/harvest-start";
import { GrowOutPageHead } from "../_components/grow-out-page-head";
import { HarvestForm } from "./harvest-form";

export const metadata: Metadata = { title: "Enter a harvest" };

export default async function EnterHarvest({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<{ sent?: string }>;
}) {
  const { db, settings, today } = await current("record");
  const { id } = await params;
  const read = await readHarvests(db, id, today);
  if (!read) notFound();
  const { growOut, variety, crop, harvests } = read;
  const names = await namesForForms(db);
  const stem = stemOf(variety.name, read.lotNumbers);
  const number = `${stem} ${highestNumber(stem, await numbersBeginning(db, stem)) + 1}`;
  const empty = startOfHarvest(read, { today, number, holder: read.steward ?? "" });
  const { sent: sentId } = await searchParams;
  const sent = sentId === undefined ? null : await readSentHarvest(db, sentId);
  const start = sent ? startOfSentHarvest(read, sent, empty, unitsOf(settings)) : empty;
  const missing = sent?.parts.filter(({ plantId }) => !read.plants.some(({ id: known }) => known === plantId)) ?? [];
  return (
    <div className="sheet stack">
      <GrowOutPageHead
        growOut={growOut}
        variety={{ ...variety, cropKey: crop.key }}
        title={harvests.length === 0 ? "Harvest it" : "A further harvest"}
      >
        Marked plants first, one by one, before the rest is cut. Take equal shares while the bags are still apart:
        tipped together, the heaviest plants are most of the seed.
      </GrowOutPageHead>
      {harvests.length > 0 ? (
        <Notice title={`${counted(harvests.length, "harvest")} of it ${harvests.length === 1 ? "is" : "are"} entered`}>
          <p>
            This one becomes a lot of its own; all of them count as one pool of plants.{" "}
            <Link href={`/grow-outs/${id}#harvested`}>Look at them</Link>
          </p>
        </Notice>
      ) : null}
      {sent ? (
        <Notice title="As a phone recorded it">
          <p>What was ticked in and weighed in the field stands in the form; look it over, and enter it.</p>
          {missing.length > 0 ? (
            <p>
              Not marked here, and so not in the form: {listed(missing.map(({ name }) => `plant ${name}`))}. Add them
              under Plants and scores first.
            </p>
          ) : null}
        </Notice>
      ) : null}
      <Cautions step={["harvest", "taste", "extract", "thresh"]} crop={crop.key} cropName={crop.commonName} />
      <HarvestForm
        growOutId={id}
        sentId={sent ? sentId : undefined}
        start={start}
        ground={groundOf(read, unitsOf(settings))}
        stewards={names.stewards.map((name) => ({ value: name, words: name }))}
      />
    </div>
  );
}

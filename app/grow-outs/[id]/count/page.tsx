import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Notice } from "@/components/ui";
import { wholeNumber } from "@/lib/display/numbers";
import type { CountOnRecord } from "@/lib/registry/grow-outs/field-records";
import { type Stage, stages } from "@/lib/schemas/grow-outs/field-kinds";
import { current } from "../../../_session/current";
import { peopleByName } from "../../_field/who";
import { whenSeen } from "../../_words/field-words";
import { GrowOutPageHead } from "../_components/grow-out-page-head";
import { fieldOfPage, growOutOfPage } from "../read";
import { CountForm } from "./count-form";

export const metadata: Metadata = { title: "Plants counted" };

const ofRoots: ReadonlySet<Stage> = new Set(["lifted", "replanted"]);

export default async function CountPlants({ params }: { params: Promise<{ id: string }> }) {
  await current("record-in-field");
  const { id } = await params;
  const [read, field] = [await growOutOfPage(id), await fieldOfPage(id)];
  if (!read || !field) notFound();
  const { growOut, variety } = read;
  const roots = field.crop.biennial || field.counts.some((count) => ofRoots.has(count.stage));
  const rows = stages
    .filter((stage) => roots || !ofRoots.has(stage))
    .map((stage) => ({ stage, onRecord: onRecord(field.counts.filter((count) => count.stage === stage)) }));
  return (
    <div className="sheet stack">
      <GrowOutPageHead growOut={growOut} variety={{ ...variety, cropKey: variety.crop.key }} title="Plants counted">
        From the notes of the field. What it counts as moves as you type; nothing goes into the records before you write
        it down.
      </GrowOutPageHead>
      {growOut.sown === null ? (
        <Notice title="When it was sown is not on record">
          <p>Counts can be written all the same; a day before the sowing cannot be told then.</p>
        </Notice>
      ) : null}
      <CountForm
        growOutId={id}
        rows={rows}
        separate={field.crop.separate}
        people={peopleByName(read.people)}
        by={growOut.stewardId ?? ""}
        ground={field.size}
      />
    </div>
  );
}

function onRecord(counts: readonly CountOnRecord[]): string | null {
  const said = counts.map((count) => `${wholeNumber(count.plants)}, ${whenSeen(count.on)}`);
  return said.length === 0 ? null : said.join("; ");
}

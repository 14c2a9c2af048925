import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { SearchParameters } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import type { FloweringOnRecord } from "@/lib/registry/grow-outs/field-records";
import { type Moment, moments, type Organ } from "@/lib/schemas/grow-outs/field-kinds";
import { current } from "../../../_session/current";
import { peopleByName } from "../../_field/who";
import { GrowOutPageHead } from "../_components/grow-out-page-head";
import { fieldOfPage, growOutOfPage } from "../read";
import { FloweringForm, type StandingNote } from "./flowering-form";

export const metadata: Metadata = { title: "Flowering" };

export default async function FloweringPage({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<SearchParameters>;
}) {
  await current("record-in-field");
  const { id } = await params;
  const [read, field] = [await growOutOfPage(id), await fieldOfPage(id)];
  if (!read || !field) notFound();
  const { growOut, variety, people } = read;
  const apart = field.crop.key.startsWith("maize") || (await searchParams).apart === "yes";
  const noted = new Set(field.flowering.map((note) => note.organ));
  const organs = (["flower", "pollen", "silk"] as const).filter(
    (organ) => noted.has(organ) || (organ === "flower" ? !apart : apart),
  );
  return (
    <div className="sheet stack">
      <GrowOutPageHead growOut={growOut} variety={{ ...variety, cropKey: variety.crop.key }} title="Flowering">
        First, half and last, each on its day in the field: 2026-07-18, 2026-07, or about: 2026-07~. The last is the one
        that nobody notes, and whether the isolation was real hangs on it.
      </GrowOutPageHead>
      {field.crop.wind && !apart ? (
        <p>
          <Way href={`/grow-outs/${id}/flowering?apart=yes`}>Note pollen and silk apart</Way>
        </p>
      ) : null}
      <FloweringForm
        growOutId={id}
        rows={organs.map((organ) => ({ organ, noted: notesOf(field.flowering, organ) }))}
        people={peopleByName(people)}
        by={growOut.stewardId ?? ""}
      />
    </div>
  );
}

function notesOf(notes: readonly FloweringOnRecord[], organ: Organ): Partial<Record<Moment, StandingNote>> {
  return Object.fromEntries(
    moments.flatMap((moment) => {
      const note = notes.find((each) => each.organ === organ && each.moment === moment);
      return note ? [[moment, { id: note.id, on: note.on }]] : [];
    }),
  );
}

import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Section } from "@/components/frame";
import { dateInWords } from "@/lib/display/dates";
import { readNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import { current } from "../../../../../_session/current";
import { momentOptions, organOptions, wordsOf } from "../../../../_neighbours/choices";
import { FormHead } from "../../../../_neighbours/form-head";
import { NeighbourFloweringForm } from "../../../../_neighbours/small-forms";

export const metadata: Metadata = { title: "Flowering of a neighbour" };

export default async function NeighbourFlowering({ params }: { params: Promise<{ id: string; source: string }> }) {
  const { db, today } = await current("correct-in-field");
  const { id, source } = await params;
  const read = await readNeighbours(db, id);
  const neighbour = read?.neighbours.find((each) => each.id === source);
  if (!read || !neighbour) notFound();
  const notes = read.notes.filter((note) => note.neighbourId === source);
  const wind = read.ground.cropKey.startsWith("maize");
  const next = momentOptions.find((option) => !notes.some((note) => note.moment === option.value));
  return (
    <div className="sheet stack">
      <FormHead ground={read.ground} title={`Flowering of ${neighbour.what}`}>
        First, half and last, as you see it. The end is what is most often forgotten.
      </FormHead>
      {notes.length > 0 ? (
        <Section id="noted" title="Noted so far">
          <ul className="stack-near">
            {notes.map((note) => (
              <li key={note.id}>
                {wordsOf(momentOptions, note.moment)} {wordsOf(organOptions, note.organ)}, {dateInWords(note.on)}
                {note.note ? `: ${note.note}` : ""}
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      <NeighbourFloweringForm
        growOutId={id}
        neighbourId={source}
        start={{ moment: next?.value ?? "first", organ: wind ? "pollen" : "flower", on: today }}
      />
    </div>
  );
}

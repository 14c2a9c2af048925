import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { moments, organs } from "@/lib/schemas/grow-outs/field-kinds";
import { current } from "../../../../_session/current";
import { TakeBackSection } from "../../../_field/take-back-form";
import { momentWords, organWords } from "../../../_words/field-words";
import { GrowOutPageHead } from "../../_components/grow-out-page-head";
import { fieldOfPage, growOutOfPage } from "../../read";
import { CorrectFloweringForm } from "./correct-flowering-form";

export const metadata: Metadata = { title: "Put a flowering note right" };

export default async function CorrectFlowering({ params }: { params: Promise<{ id: string; entry: string }> }) {
  await current("correct-in-field");
  const { id, entry } = await params;
  const [read, field] = [await growOutOfPage(id), await fieldOfPage(id)];
  const note = field?.flowering.find((each) => each.id === entry);
  if (!read || !field || !note) notFound();
  return (
    <div className="sheet stack">
      <GrowOutPageHead
        growOut={read.growOut}
        variety={{ ...read.variety, cropKey: read.variety.crop.key }}
        title="Put a flowering note right"
      />
      <CorrectFloweringForm
        growOutId={id}
        noteId={entry}
        start={{ organ: note.organ, moment: note.moment, on: note.on ?? "", note: note.note ?? "", why: "" }}
        organs={organs.map((organ) => ({ value: organ, words: organWords[organ] }))}
        moments={moments.map((moment) => ({ value: moment, words: momentWords[moment] }))}
      />
      <TakeBackSection growOutId={id} table="FloweringNote" entryId={entry} />
    </div>
  );
}

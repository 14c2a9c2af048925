import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { stages } from "@/lib/schemas/grow-outs/field-kinds";
import { current } from "../../../../_session/current";
import { TakeBackSection } from "../../../_field/take-back-form";
import { stageWords } from "../../../_words/field-words";
import { GrowOutPageHead } from "../../_components/grow-out-page-head";
import { fieldOfPage, growOutOfPage } from "../../read";
import { CorrectCountForm } from "./correct-count-form";

export const metadata: Metadata = { title: "Put a count right" };

export default async function CorrectCount({ params }: { params: Promise<{ id: string; entry: string }> }) {
  await current("correct-in-field");
  const { id, entry } = await params;
  const [read, field] = [await growOutOfPage(id), await fieldOfPage(id)];
  const count = field?.counts.find((each) => each.id === entry);
  if (!read || !field || !count) notFound();
  const { stage, plants, males, on, thinnedBy, note } = count;
  return (
    <div className="sheet stack">
      <GrowOutPageHead
        growOut={read.growOut}
        variety={{ ...read.variety, cropKey: read.variety.crop.key }}
        title="Put a count right"
      />
      <CorrectCountForm
        growOutId={id}
        countId={entry}
        start={{
          ...{ stage, plants: String(plants), on: on ?? "", thinnedBy: thinnedBy ?? "", note: note ?? "", why: "" },
          ...(males === null ? {} : { males: String(males) }),
        }}
        stages={stages.map((each) => ({ value: each, words: stageWords[each].name }))}
        separate={field.crop.separate}
        ground={field.size}
      />
      <TakeBackSection growOutId={id} table="StageCount" entryId={entry} />
    </div>
  );
}

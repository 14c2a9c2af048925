import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { timingNotSaid } from "@/lib/schemas/grow-outs/field-counts";
import { current } from "../../../../_session/current";
import { TakeBackSection } from "../../../_field/take-back-form";
import { passStageOptions, reasonOptions } from "../../../_words/field-words";
import { GrowOutPageHead } from "../../_components/grow-out-page-head";
import { fieldOfPage, growOutOfPage } from "../../read";
import { CorrectPassForm } from "./correct-pass-form";

export const metadata: Metadata = { title: "Put a rogue pass right" };

export default async function CorrectPass({ params }: { params: Promise<{ id: string; entry: string }> }) {
  await current("correct-in-field");
  const { id, entry } = await params;
  const [read, field] = [await growOutOfPage(id), await fieldOfPage(id)];
  const pass = field?.passes.find((each) => each.id === entry);
  if (!read || !field || !pass) notFound();
  const { on, stage, timing, looked, pulled, left, reason, note } = pass;
  const text = (value: string | number | null) => (value === null ? "" : String(value));
  // What a notebook wrote in its own words stays to be chosen.
  const withOwn = (options: typeof reasonOptions, own: string | null) =>
    own === null || options.some(({ value }) => value === own) ? options : [...options, { value: own, words: own }];
  return (
    <div className="sheet stack">
      <GrowOutPageHead
        growOut={read.growOut}
        variety={{ ...read.variety, cropKey: read.variety.crop.key }}
        title="Put a rogue pass right"
      >
        One line of a walk: plants pulled for one reason.
      </GrowOutPageHead>
      <CorrectPassForm
        growOutId={id}
        passId={entry}
        start={{
          ...{
            on: text(on),
            stage: text(stage),
            timing: timing ?? timingNotSaid,
            looked: text(looked),
            pulled: text(pulled),
          },
          ...{ left: text(left), reason: text(reason), note: text(note), why: "" },
        }}
        stages={withOwn(passStageOptions, stage)}
        reasons={withOwn(reasonOptions, reason)}
        ground={field.size}
      />
      <TakeBackSection growOutId={id} table="RoguePass" entryId={entry} />
    </div>
  );
}

import type { Metadata } from "next";
import { PageHead } from "@/components/frame";
import { listCrops } from "@/lib/registry/crops/list-crops";
import { current } from "../../_session/current";
import { storeVariety } from "../_actions/record";
import type { FieldSpec } from "../_forms/field-spec";
import { RecordForm } from "../_forms/record-form";
import { aimWords } from "../_words/aim-words";

export const metadata: Metadata = { title: "A new variety" };

export default async function NewVariety() {
  const { db } = await current("desk");
  const crops = await listCrops(db);
  const fields: readonly FieldSpec[] = [
    { kind: "words", name: "name", label: "Name", required: true, hint: "As its keepers say it" },
    {
      kind: "select",
      name: "crop",
      label: "Crop",
      required: true,
      empty: "choose",
      options: crops.map((crop) => ({ value: crop.commonName, words: crop.commonName })),
    },
    {
      kind: "words",
      name: "otherCrop",
      label: "Or a crop that the list does not have",
      hint: "It becomes a crop of your own, of which nothing is known yet",
    },
    {
      kind: "choice",
      name: "aim",
      label: "What you aim at",
      hint: "It may be left open",
      options: Object.entries(aimWords).map(([value, { words, note }]) => ({ value, words, note })),
    },
    {
      kind: "words",
      name: "typeDescription",
      label: "What it should look like",
      lines: 3,
      hint: "White to cream, never yellow",
    },
    {
      kind: "words",
      name: "story",
      label: "Its story",
      lines: 5,
      hint: "Where it came from, in the words in which it was told",
    },
  ];
  return (
    <div className="sheet stack">
      <PageHead title="A new variety" kind="Variety">
        <p className="measure">
          The name and the crop are enough to begin with. A whole notebook of years is quicker typed in{" "}
          <a href="/type-in">line by line</a>.
        </p>
      </PageHead>
      <RecordForm
        fields={fields}
        action={storeVariety}
        confirm="Record the variety"
        back={{ href: "/varieties", words: "Back to the varieties" }}
      />
    </div>
  );
}

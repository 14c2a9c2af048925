import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { current } from "../../../../_session/current";
import { storeTraitCorrection } from "../../../_actions/correct";
import type { FieldSpec } from "../../../_forms/field-spec";
import { RecordForm } from "../../../_forms/record-form";
import { additionFields } from "../../../_words/additions";

export const metadata: Metadata = { title: "Correct a line of the type" };

export default async function CorrectLine({ params }: { params: Promise<{ id: string; line: string }> }) {
  const { db, settings, today } = await current("correct");
  const { id, line: lineId } = await params;
  const read = await readVariety(db, id, settings, today);
  const line = read?.traits.find((each) => each.id === lineId);
  if (!read || !line) notFound();
  const stored: Readonly<Record<string, string | null>> = {
    trait: line.trait,
    allowed: line.allowed,
    offType: line.offType,
    part: line.part,
  };
  const fields: readonly FieldSpec[] = [
    ...additionFields("trait", { people: [], lots: [] }).map((field) =>
      field.kind === "hidden" ? field : { ...field, value: stored[field.name] },
    ),
    { kind: "words", name: "reason", label: "Why it is corrected", required: true, hint: "Both stay in the history" },
  ];
  return (
    <div className="sheet stack">
      <PageHead title={`Correct “${line.trait}”`} kind={read.variety.name} />
      <RecordForm
        fields={fields}
        action={storeTraitCorrection.bind(null, line.id)}
        confirm="Store the correction"
        back={{ href: `/varieties/${id}#type`, words: "Leave it as it is" }}
      />
    </div>
  );
}

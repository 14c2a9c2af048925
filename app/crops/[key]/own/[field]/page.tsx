import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { readCrop } from "@/lib/registry/crops/read-crop";
import { cropFieldNames, cropFields } from "@/lib/schemas/crops/crop-fields";
import { current } from "../../../../_session/current";
import type { FieldSpec } from "../../../../varieties/_forms/field-spec";
import { RecordForm } from "../../../../varieties/_forms/record-form";
import { storeOwnValue } from "../../../_actions/own-value";
import { cropFieldWords } from "../../../_words/crop-words";

export const metadata: Metadata = { title: "An own value" };

export default async function OwnValue({ params }: { params: Promise<{ key: string; field: string }> }) {
  const { db } = await current("settings");
  const { key, field: asked } = await params;
  const field = cropFieldNames.find((name) => name === asked);
  const crop = field ? await readCrop(db, decodeURIComponent(key)) : null;
  const read = crop?.fields.find((each) => each.field === field);
  if (!field || !crop || !read) notFound();
  const kind = cropFields[field];
  const { name, unit } = cropFieldWords[field];
  const now = read.own?.value ?? read.listed;
  const value = now === null ? null : String(now);
  const label = "Your own value";
  const asks: FieldSpec =
    kind.kind === "choice"
      ? {
          kind: "select",
          name: "value",
          label,
          required: true,
          value,
          options: kind.choices.map((choice) => ({ value: choice, words: choice })),
        }
      : kind.kind === "words"
        ? { kind: "words", name: "value", label, required: true, value, lines: 3 }
        : { kind: "number", name: "value", label, required: true, value, unit, whole: kind.kind === "whole" };
  const fields: readonly FieldSpec[] = [
    asks,
    {
      kind: "words",
      name: "reason",
      label: "Why it differs",
      required: true,
      value: read.own?.reason,
      lines: 2,
      hint: "Seen here for years; a colder valley; a strain that keeps longer",
    },
    {
      kind: "words",
      name: "source",
      label: "Where it comes from",
      value: read.own?.source,
      hint: "Your own notes, a book, a neighbour",
    },
  ];
  return (
    <div className="sheet stack">
      <PageHead title={name} kind={crop.commonName}>
        <p className="measure">
          The list says {read.listed === null ? "nothing" : `${read.listed}${unit ? ` ${unit}` : ""}`}. Verdicts follow
          your own value from now on, and say so.
        </p>
      </PageHead>
      <RecordForm
        fields={fields}
        action={storeOwnValue.bind(null, { id: crop.id, key: crop.key, field })}
        confirm="Store the value"
        back={{ href: `/crops/${encodeURIComponent(crop.key)}#${field}`, words: "Leave it as it is" }}
      />
    </div>
  );
}

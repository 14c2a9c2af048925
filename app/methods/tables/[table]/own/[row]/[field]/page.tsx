import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { tableValue } from "@/lib/display/own-values";
import { ownTableValues } from "@/lib/registry/tables/own-table-values";
import { publishedTable } from "@/lib/schemas/tables/published-tables";
import { current } from "../../../../../../_session/current";
import type { FieldSpec } from "../../../../../../varieties/_forms/field-spec";
import { RecordForm } from "../../../../../../varieties/_forms/record-form";
import { storeTableValue } from "../../../../_actions/table-value";
import { afterOwnValue } from "../../../../_words/addresses";

export const metadata: Metadata = { title: "An own value" };

export default async function OwnTableValuePage({
  params,
  searchParams,
}: {
  params: Promise<{ table: string; row: string; field: string }>;
  searchParams: Promise<{ crop?: string }>;
}) {
  const { db } = await current("settings");
  const asked = await params;
  const { crop } = await searchParams;
  const table = publishedTable(asked.table);
  const row = table?.rows.find(({ key }) => key === decodeURIComponent(asked.row));
  const field = table?.fields.find(({ key }) => row && key === asked.field && key in row.values);
  if (!table || !row || !field) notFound();
  const mine = (await ownTableValues(db)).find(
    (each) => each.table === table.key && each.row === row.key && each.field === field.key,
  );
  const published = row.values[field.key] ?? null;
  const bounds = { ...field, ...row.bounds?.[field.key] };
  const now = mine?.value ?? published;
  const label = "Your own value";
  const value = now === null ? null : String(now);
  const fields: readonly FieldSpec[] = [
    field.kind === "words"
      ? { kind: "words", name: "value", label, required: true, value, hint: field.written?.needed }
      : {
          kind: "number",
          name: "value",
          label,
          required: true,
          value,
          unit: field.unit,
          whole: field.kind === "whole",
          hint: `From ${bounds.least} to ${bounds.most}`,
        },
    {
      kind: "words",
      name: "reason",
      label: "Why it differs",
      required: true,
      value: mine?.reason,
      lines: 2,
      hint: "Measured here; another rule holds where you are",
    },
    {
      kind: "words",
      name: "source",
      label: "Where it comes from",
      value: mine?.source,
      hint: "Your own notes, a book, the law of your place",
    },
  ];
  return (
    <div className="sheet stack">
      <PageHead title={`${row.name}: ${field.name}`} kind={table.title}>
        <p className="measure">
          The table says {tableValue(field, published)} ({row.source}). What is worked out with it follows your own
          value from now on, and says so.
        </p>
      </PageHead>
      <RecordForm
        fields={fields}
        action={storeTableValue.bind(null, { table: table.key, row: row.key, field: field.key, crop })}
        confirm="Store the value"
        back={{ href: afterOwnValue(table.key, crop), words: "Leave it as it is" }}
      />
    </div>
  );
}

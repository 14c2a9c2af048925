import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { SimpleTable } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { tableValue } from "@/lib/display/own-values";
import { type OwnTableValue, ownTableValues } from "@/lib/registry/tables/own-table-values";
import { calculationNamed } from "@/lib/schemas/calculations";
import {
  type PublishedTable,
  publishedTable,
  type TableField,
  type TableRow,
} from "@/lib/schemas/tables/published-tables";
import { current } from "../../../_session/current";
import { MarkedSource, ValuesWithOwn, ValueWithOwn } from "../../../crops/_parts/value-with-own";
import { HistoryOf } from "../../../history/_components/history-of";
import { dropTableValue } from "../_actions/table-value";
import { ownValueHref } from "../_words/addresses";

type Params = { params: Promise<{ table: string }> };

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  return { title: publishedTable((await params).table)?.title ?? "A table" };
}

export default async function Table({ params }: Params) {
  const { db } = await current();
  const table = publishedTable((await params).table);
  if (!table) notFound();
  const own = (await ownTableValues(db)).filter((each) => each.table === table.key);
  const method = table.method ? calculationNamed(table.method) : undefined;
  return (
    <div className="sheet stack">
      <PageHead title={table.title} kind="Published table">
        <p className="measure">
          {table.about} {method ? <Link href={`/methods/${method.name}`}>The method: {method.title}</Link> : null}
        </p>
      </PageHead>
      {own.length > 0 ? <OwnValues table={table} own={own} /> : null}
      <Section
        id="rows"
        title="The table"
        aside={
          <a href={`/methods/tables/${table.key}/csv`} download>
            as CSV
          </a>
        }
      >
        <SimpleTable
          entries
          columns={[
            { key: "name", name: "Of" },
            ...table.fields.map(({ key, name, unit, kind }) => ({
              key,
              name: unit ? `${name}, ${unit}` : name,
              kind: kind === "words" ? ("words" as const) : ("count" as const),
            })),
            { key: "source", name: "From" },
          ]}
          rows={table.rows.map((row) => ({
            id: row.key,
            cells: {
              name: row.detail ? (
                <>
                  {row.name} <span className="quiet">{row.detail}</span>
                </>
              ) : (
                row.name
              ),
              ...Object.fromEntries(table.fields.map((field) => [field.key, valueCell(table, row, field, own)])),
              source: <MarkedSource words={row.source} mark={row.mark} />,
            },
          }))}
        />
      </Section>
      {own.length > 0 ? <HistoryOf ids={own.map(({ id }) => id)} /> : null}
      <p>
        <ButtonLink href="/methods/tables" kind="quiet">
          All tables
        </ButtonLink>
      </p>
    </div>
  );
}

/** A value as it holds here, and the way to an own one. */
function valueCell(table: PublishedTable, row: TableRow, field: TableField, own: readonly OwnTableValue[]) {
  if (!(field.key in row.values)) return null;
  const mine = own.find((each) => each.row === row.key && each.field === field.key);
  const published = row.values[field.key] ?? null;
  // The unit stands in the column's head.
  const words = tableValue({ ...field, unit: undefined }, mine?.value ?? published);
  return (
    <Way href={ownValueHref(table.key, row.key, field.key)} otherwise={words} prefetch={false}>
      {words}
      {mine ? " (your own)" : ""}
      <span className="heard">
        , {field.name} of {row.name}: write an own value
      </span>
    </Way>
  );
}

function OwnValues({ table, own }: { table: PublishedTable; own: readonly OwnTableValue[] }) {
  return (
    <Section id="own" title="Your own values">
      <ValuesWithOwn>
        {own.map((mine) => {
          const row = table.rows.find(({ key }) => key === mine.row);
          const field = table.fields.find(({ key }) => key === mine.field);
          const published = row?.values[mine.field] ?? null;
          return (
            <ValueWithOwn
              key={mine.id}
              id={mine.id}
              name={`${row?.name ?? mine.row}: ${field?.name ?? mine.field}`}
              by="table"
              published={published === null ? null : tableValue(field, published)}
              own={{ ...mine, value: tableValue(field, mine.value) }}
              sources={row ? <MarkedSource words={row.source} mark={row.mark} /> : null}
              href={ownValueHref(table.key, mine.row, mine.field)}
              drop={dropTableValue.bind(null, mine.id, `/methods/tables/${table.key}`)}
            />
          );
        })}
      </ValuesWithOwn>
    </Section>
  );
}

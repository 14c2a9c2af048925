import Link from "next/link";
import { Section } from "@/components/frame";
import { tableValue } from "@/lib/display/own-values";
import type { CropRead } from "@/lib/registry/crops/read-crop";
import type { OwnTableValue } from "@/lib/registry/tables/own-table-values";
import { publishedTables, rowsOfCrop } from "@/lib/schemas/tables/published-tables";
import { dropTableValue } from "../../../methods/tables/_actions/table-value";
import { ownValueHref } from "../../../methods/tables/_words/addresses";
import { MarkedSource, ValuesWithOwn, ValueWithOwn } from "../../_parts/value-with-own";

/** What the published tables say of a crop, each value with its source, its mark and the steward's own value. */
export function TablePart({ crop, own }: { crop: CropRead; own: readonly OwnTableValue[] }) {
  const latinName = crop.fields.find(({ field }) => field === "latinName")?.listed ?? null;
  const species = { key: crop.key, latinName: latinName === null ? null : String(latinName) };
  const found = publishedTables.flatMap((table) => rowsOfCrop(table, species).map((row) => ({ table, row })));
  if (found.length === 0) return null;
  return (
    <Section id="tables" title="In the published tables">
      {found.map(({ table, row }) => (
        <div key={`${table.key} ${row.key}`}>
          <h3>
            <Link href={`/methods/tables/${table.key}`}>{table.title}</Link>: {row.name}
          </h3>
          <ValuesWithOwn>
            {table.fields
              .filter(({ key }) => key in row.values)
              .map((field) => {
                const mine = own.find(
                  (each) => each.table === table.key && each.row === row.key && each.field === field.key,
                );
                const published = row.values[field.key] ?? null;
                return (
                  <ValueWithOwn
                    key={field.key}
                    id={`${table.key}-${row.key}-${field.key}`.replaceAll(/[^A-Za-z0-9]+/g, "-")}
                    name={field.name}
                    by="table"
                    published={published === null ? null : tableValue(field, published)}
                    own={mine ? { ...mine, value: tableValue(field, mine.value) } : null}
                    sources={<MarkedSource words={row.source} mark={row.mark} />}
                    href={ownValueHref(table.key, row.key, field.key, crop.key)}
                    drop={dropTableValue.bind(null, mine?.id ?? "", `/crops/${encodeURIComponent(crop.key)}#tables`)}
                  />
                );
              })}
          </ValuesWithOwn>
        </div>
      ))}
    </Section>
  );
}

import type { Column } from "@/components/tables";
import { ownTableValues } from "@/lib/registry/tables/own-table-values";
import { publishedTable } from "@/lib/schemas/tables/published-tables";
import { current } from "../../../../_session/current";
import { rowsAsCsv } from "../../../../varieties/csv/rows-as-csv";

const spelled: Readonly<Record<string, string>> = { "%": "percent", "°C": "celsius" };

/** A published table with its sources; own values stand in their place, and are named in the last column. */
export async function GET(request: Request, { params }: { params: Promise<{ table: string }> }): Promise<Response> {
  const { db } = await current();
  const table = publishedTable((await params).table);
  if (!table) return new Response("There is no such table.", { status: 404 });
  const own = (await ownTableValues(db)).filter((each) => each.table === table.key);
  const columns: readonly Column[] = [
    { key: "of", name: "Of", kind: "words" },
    { key: "detail", name: "Detail", kind: "words" },
    ...table.fields.map(({ key, name }) => ({ key: `field ${key}`, name, kind: "words" as const })),
    { key: "source", name: "Source", kind: "words" },
    { key: "mark", name: "How far checked", kind: "words" },
    { key: "own", name: "Your own values", kind: "words" },
  ];
  const rows = table.rows.map((row) => {
    const mine = own.filter((each) => each.row === row.key);
    const valueHere = (key: string) => mine.find(({ field }) => field === key)?.value ?? row.values[key] ?? "";
    return {
      id: row.key,
      cells: {
        of: row.name,
        detail: row.detail ?? "",
        ...Object.fromEntries(table.fields.map(({ key }) => [`field ${key}`, valueHere(key)])),
        source: row.source,
        mark: row.mark,
        own: table.fields.flatMap(({ key, name }) => (mine.some(({ field }) => field === key) ? name : [])).join(", "),
      },
    };
  });
  const units = Object.fromEntries(
    table.fields.flatMap(({ key, unit }) => (unit ? [[`field ${key}`, spelled[unit] ?? unit]] : [])),
  );
  return rowsAsCsv(request, table.key, columns, rows, units);
}

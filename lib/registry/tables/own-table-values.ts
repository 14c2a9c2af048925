import type { Database } from "@/lib/db";
import { publishedTable } from "@/lib/schemas/tables/published-tables";
import type { OwnInTable } from "@/lib/science/tables/own-in-table";
import { keptUntilChange } from "../change-set/kept-until-change";

/** An own value as a page shows it: with the id by which it is taken back. */
export interface OwnTableValue extends OwnInTable {
  readonly id: string;
}

/** All own values in published tables; what names no row or field of today's tables is left alone and has no effect. */
export const ownTableValues = keptUntilChange(async (db: Database): Promise<readonly OwnTableValue[]> => {
  const rows = await db.read.tableOverride.findMany({ orderBy: { id: "asc" } });
  return rows.flatMap(({ value, ...row }) => {
    const table = publishedTable(row.table);
    const field = table?.fields.find(({ key }) => key === row.field);
    const published = table?.rows.find(({ key }) => key === row.row);
    if (!field || !published || !(row.field in published.values)) return [];
    return [{ ...row, value: field.kind === "words" ? value : Number(value) }];
  });
});

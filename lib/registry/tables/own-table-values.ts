import { type Database, joined, type Selection, sql } from "@/lib/db";
import { publishedTable } from "@/lib/schemas/tables/published-tables";
import type { OwnInTable } from "@/lib/science/tables/own-in-table";
import { keptUntilChange } from "../change-set/kept-until-change";

/** An own value as a page shows it: with the id by which it is taken back. */
export interface OwnTableValue extends OwnInTable {
  readonly id: string;
}

/** All own values in published tables; what names no row or field of today's tables is left alone and has no effect. */
export const ownTableValues = keptUntilChange(async (db: Database): Promise<readonly OwnTableValue[]> => {
  return validOwnValues(await db.read.tableOverride.findMany({ orderBy: { id: "asc" } }));
});

/** The own values in some tables, for who reads other rows in the same statement. */
export function ownTableSelection(tables: readonly string[]): Selection<StoredOwnValue> {
  return {
    columns: { id: "text", table: "text", row: "text", field: "text", value: "text", reason: "text", source: "text" },
    rows: sql`
      SELECT o."id", o."table", o."row", o."field", o."value", o."reason", o."source" FROM "TableOverride" o
      WHERE o."table" IN (${joined([...tables])}) ORDER BY o."id"`,
  };
}

type StoredOwnValue = Omit<OwnTableValue, "value"> & { readonly value: string };

/** Own values as they apply; what names no row or field of today's tables is left out. */
export function validOwnValues(rows: readonly StoredOwnValue[]): readonly OwnTableValue[] {
  return rows.flatMap(({ value, ...row }) => {
    const table = publishedTable(row.table);
    const field = table?.fields.find(({ key }) => key === row.field);
    const published = table?.rows.find(({ key }) => key === row.row);
    if (!field || !published || !(row.field in published.values)) return [];
    return [{ ...row, value: field.kind === "words" ? value : Number(value) }];
  });
}

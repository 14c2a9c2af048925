import { publishedTable, type TableField } from "@/lib/schemas/tables/published-tables";
import type { OwnOfRow } from "@/lib/science/tables/own-in-table";
import { plainNumber } from "./numbers";

/** A value of a published table as it is read: with its unit, "nothing" where the table has none. */
export function tableValue(field: TableField | undefined, value: number | string | null | undefined): string {
  if (value === null || value === undefined) return "nothing";
  // Constants are shown to the last figure that was published.
  const words = typeof value === "number" ? plainNumber(value, 6) : value;
  return field?.unit ? `${words} ${field.unit}` : words;
}

/** One sentence for each own value that moved a figure: "Least germination is your own value, 60 % in place of 65 %: a cold house." */
export function ownValuesInWords(own: readonly OwnOfRow[]): string[] {
  return own.map(({ table, field: key, value, instead, reason, source }) => {
    const field = publishedTable(table)?.fields.find((each) => each.key === key);
    const values = `${tableValue(field, value)} in place of ${tableValue(field, instead)}`;
    const from = source ? ` (${source})` : "";
    return `${field?.name ?? key} is your own value, ${values}: ${reason}${from}.`;
  });
}

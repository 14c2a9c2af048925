import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import {
  publishedTable,
  type TableField,
  type TableRow,
  type TableValueInput,
  TableValueSchema,
} from "@/lib/schemas/tables/published-tables";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";

/**
 * Puts a steward's own value in the place of one of a published table, with its reason; a second one replaces the first. Refused: a table, row or
 * field that is not there, a value of another kind or out of its range, an end of a range beyond the other, no reason.
 */
export async function setTableValue(
  db: Database,
  actor: Actor,
  input: TableValueInput,
): Promise<Outcome<Performed<{ id: string }>>> {
  const read = parseForm(TableValueSchema, input);
  if (!read.ok) return read;
  const { table: key, row: rowKey, field: fieldKey, reason, source } = read.value;
  const table = publishedTable(key);
  if (!table) return refused(refusal("unknown-table", ["table"], key, "is no table here", "choose one of the list"));
  const row = table.rows.find((each) => each.key === rowKey);
  if (!row) return refused(refusal("unknown-row", ["row"], rowKey, "is no row of the table", "choose one of its rows"));
  const field = table.fields.find((each) => each.key === fieldKey && each.key in row.values);
  if (!field)
    return refused(refusal("unknown-field", ["field"], fieldKey, "is no value of that row", "choose one of the row's"));
  const value = valueFor({ ...field, ...row.bounds?.[fieldKey] }, read.value.value);
  if (!value.ok) return value;
  const operation = { action: "settings" as const, title: `Own value for ${row.name}: ${field.name}`, reason };
  return perform(db, actor, operation, async (change, tx) => {
    const own = await tx.tableOverride.findMany({ where: { table: key, row: rowKey } });
    const crossed = crossing(table.fields, field, value.value, standing(row, own));
    if (crossed) return refused(crossed);
    const before = own.find((each) => each.field === fieldKey);
    const id = before?.id ?? uuidv7();
    const stored = { value: String(value.value), reason, source };
    if (before) await change.update("TableOverride", id, stored);
    else await change.create("TableOverride", { id, table: key, row: rowKey, field: fieldKey, ...stored });
    change.touchNothing();
    return accepted({ id });
  });
}

/** The value as its field takes it, or why it cannot stand there. */
function valueFor({ kind, least, most, unit, written }: TableField, typed: string): Outcome<number | string> {
  const path = ["value"];
  if (kind === "words") {
    if (!written || written.as.test(typed)) return accepted(typed);
    return refused(refusal("not-written-so", path, typed, "cannot be read here", written.needed));
  }
  const text = typed.replace(",", ".").replace("−", "-");
  const number = /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (Number.isNaN(number) || (kind === "whole" && !Number.isInteger(number))) {
    const wrong = kind === "whole" ? "is not a whole number" : "is not a number";
    return refused(refusal("not-a-number", path, typed, wrong, `write figures alone${unit ? `, in ${unit}` : ""}`));
  }
  if ((least !== undefined && number < least) || (most !== undefined && number > most))
    return refused(
      refusal("out-of-range", path, typed, "cannot stand here", `write a number from ${least} to ${most}`),
    );
  return accepted(number);
}

type Standing = Readonly<Record<string, number | string | null>>;

/** The row's values as they hold now. */
function standing(row: TableRow, own: readonly { readonly field: string; readonly value: string }[]): Standing {
  return { ...row.values, ...Object.fromEntries(own.map(({ field, value }) => [field, value])) };
}

/** Whether the two ends of a range would pass each other. */
function crossing(
  fields: readonly TableField[],
  { key, notBelow }: TableField,
  value: number | string,
  now: Standing,
): Refusal | null {
  const lower = notBelow === undefined ? null : now[notBelow];
  if (lower != null && Number(value) < Number(lower))
    return refusal("range-crossed", ["value"], value, "lies below the other end", `write ${lower} or more`);
  const above = fields.find((each) => each.notBelow === key);
  const upper = above && now[above.key];
  if (upper != null && Number(value) > Number(upper))
    return refusal("range-crossed", ["value"], value, "lies above the other end", `write ${upper} or less`);
  return null;
}

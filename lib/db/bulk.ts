import type { Transaction } from "./client";
import type { Engine } from "./location";

const rowsAtOnce = 500;

type Row = Readonly<Record<string, unknown>>;

/**
 * Inserts many rows through the Prisma connection, 500 a statement, from one JSON argument. Columns that a row leaves out take the
 * table's default. Values are text, finite numbers, booleans or null.
 */
export async function insertRows(
  tx: Transaction,
  engine: Engine,
  table: string,
  rows: readonly Row[],
  onInserted: (count: number) => void = () => {},
): Promise<void> {
  let inserted = 0;
  for (const [columns, alike] of byColumns(rows)) {
    for (let start = 0; start < alike.length; start += rowsAtOnce) {
      const chunk = JSON.stringify(alike.slice(start, start + rowsAtOnce));
      await tx.$executeRawUnsafe(insertion(engine, table, columns), chunk);
      inserted += Math.min(rowsAtOnce, alike.length - start);
      onInserted(inserted);
    }
  }
}

/** Rows that name the same columns go together, in the order in which they came. */
function byColumns(rows: readonly Row[]): Map<string[], Row[]> {
  const groups = new Map<string, { columns: string[]; rows: Row[] }>();
  for (const row of rows) {
    const columns = Object.keys(row).filter((key) => row[key] !== undefined);
    const signature = columns.slice().sort().join(",");
    const group = groups.get(signature);
    if (group) group.rows.push(row);
    else groups.set(signature, { columns, rows: [row] });
  }
  return new Map([...groups.values()].map((group) => [group.columns, group.rows]));
}

function insertion(engine: Engine, table: string, columns: readonly string[]): string {
  const names = columns.map((column) => `"${column}"`).join(", ");
  if (engine === "postgresql") {
    return `INSERT INTO "${table}" (${names}) SELECT ${names} FROM json_populate_recordset(NULL::"${table}", $1::json)`;
  }
  const values = columns.map((column) => `value ->> '$.${column}'`).join(", ");
  return `INSERT INTO "${table}" (${names}) SELECT ${values} FROM json_each(?) ORDER BY key`;
}

/** The marks for so many arguments of a raw statement, as the engine writes them; `after`: how many stand before. */
export function placeholders(engine: Engine, count: number, after = 0): string {
  return Array.from({ length: count }, (_none, index) =>
    engine === "postgresql" ? `$${after + index + 1}` : "?",
  ).join(", ");
}
